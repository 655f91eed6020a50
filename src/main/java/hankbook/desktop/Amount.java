package hankbook.desktop;

import hankbook.measure.Length;

/**
 * A length as a table shows it: sorted by what it is, written once.
 *
 * @param length the length
 * @param text how it is written
 */
record Amount(Length length, String text) implements Comparable<Amount> {
  private static final String NONE = "–";

  static Amount of(Length length) {
    return new Amount(length, length.isZero() ? NONE : Wording.yarn(length));
  }

  @Override
  public int compareTo(Amount other) {
    return length.compareTo(other.length);
  }

  @Override
  public String toString() {
    return text;
  }
}
