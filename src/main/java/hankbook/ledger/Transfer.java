package hankbook.ledger;

import hankbook.measure.Length;

/** A length of one skein going from one place to another. */
public record Transfer(String skein, Place from, Place to, Length length) {
  /** More than any mill ships, and small enough that millions of such transfers still add up exactly. */
  public static final Length LONGEST = Length.metres(100_000_000);

  public Transfer {
    Words.name("skein", skein);
    if (from.equals(to)) {
      throw Words.wrong("to", to, "another place than it comes from");
    }
    if (!length.isPositive() || length.compareTo(LONGEST) > 0) {
      throw Words.wrong("length", length, "one over zero and up to " + LONGEST);
    }
  }

  /** The same length going back. */
  public Transfer back() {
    return new Transfer(skein, to, from, length);
  }
}
