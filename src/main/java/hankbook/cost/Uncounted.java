package hankbook.cost;

import hankbook.measure.Phrase;

/**
 * Something that a plan takes and whose cost is in no sum.
 *
 * @param kind of thing
 * @param what it is
 * @param why its cost is not counted
 */
public record Uncounted(Kind kind, Phrase what, Phrase why) {
  /** What sort of cost it would be. */
  public enum Kind {
    YARN,
    WORK,
    OVERHEADS
  }

  /** Of yarn. */
  public Uncounted(Phrase what, Phrase why) {
    this(Kind.YARN, what, why);
  }

  /** What it is and why, to be said in any language. */
  public Phrase phrase() {
    return Phrase.of("{0}: {1}", what, why);
  }

  @Override
  public String toString() {
    return phrase().english();
  }
}
