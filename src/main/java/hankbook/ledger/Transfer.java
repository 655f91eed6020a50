package hankbook.ledger;

import hankbook.measure.Length;
import hankbook.yarn.Skein;

/** A length of one skein going from one place to another. */
public record Transfer(String skein, Place from, Place to, Length length) {
  /** No transfer moves more than a skein can hold. */
  public static final Length LONGEST = Skein.LONGEST;

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
