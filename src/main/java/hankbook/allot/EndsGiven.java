package hankbook.allot;

import hankbook.measure.Length;

/**
 * Ends of one kind that a skein gives.
 *
 * @param kind which of the demand's kinds, counted from 0: of a plan, which of the yarn's needs for the warp, in the order of its needs
 * @param ends how many, at least 1
 * @param each yarn in one
 */
public record EndsGiven(int kind, int ends, Length each) {
  /** The yarn in them. */
  public Length length() {
    return each.times(ends);
  }
}
