package hankbook.exchange;

/**
 * A colour of a draft.
 *
 * @param number by which the draft calls it; of equal colours the lowest, 0 for threads to which the draft gives none
 * @param hex in sRGB as {@code #rrggbb}, or empty where the draft does not show what it looks like
 */
public record WeaveColour(int number, String hex) implements Comparable<WeaveColour> {
  /** That of threads to which the draft gives no colour. */
  public static final WeaveColour NONE = new WeaveColour(0, "");

  @Override
  public int compareTo(WeaveColour other) {
    return Integer.compare(number, other.number);
  }

  /** {@code #2f5d8a}, {@code colour 3}, or {@code no colour}. */
  @Override
  public String toString() {
    return !hex.isEmpty() ? hex : number == 0 ? "no colour" : "colour " + number;
  }
}
