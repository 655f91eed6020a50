package hankbook.allot;

/** Whether the shelf covers what a plan needs of a yarn. */
public enum Verdict {
  /** Enough, and surely enough. */
  COVERED,
  /** Enough, but the risk of running short is over the limit. */
  TIGHT,
  /** Not enough, in metres or in whole ends. */
  SHORT
}
