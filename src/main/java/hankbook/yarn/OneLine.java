package hankbook.yarn;

import hankbook.measure.Unreadable;

/** The texts by which things are called: short enough for a column, and on one line. */
public final class OneLine {
  /** The most characters such a text has. */
  public static final int MOST = 200;

  private static final String WANTED = "one line of at most " + MOST + " printable characters";

  private OneLine() {}

  /**
   * The text without spaces around it; may be empty.
   *
   * @throws Unreadable if it is longer, or has line ends or other control characters in it
   */
  public static String of(String text) {
    String stripped = text.strip();
    if (stripped.length() > MOST) {
      throw new Unreadable(stripped.substring(0, 20) + "…", WANTED);
    }
    if (stripped.codePoints().anyMatch(OneLine::isUnprintable)) {
      throw new Unreadable(stripped.replaceAll("\\p{Cntrl}|\\p{Cs}", "�"), WANTED);
    }
    return stripped;
  }

  private static boolean isUnprintable(int codePoint) {
    return Character.isISOControl(codePoint) || Character.getType(codePoint) == Character.SURROGATE;
  }
}
