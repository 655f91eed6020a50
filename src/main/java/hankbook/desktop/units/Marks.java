package hankbook.desktop.units;

import java.util.regex.Pattern;

/**
 * The decimal mark between what the files say and what is read and typed in the window. Files have a point. Where the user's mark is a comma, points and commas between
 * digits or at the head of a number change places, so that "1,5" is 1.5, and "1.234" is no number at all, rather than one of two. Blanks that part thousands are for reading and left out;
 * those that part one number from the next stay.
 *
 * @param decimal a point or a comma
 */
public record Marks(char decimal) {
  /** Blanks that the window shows and no keyboard types by chance. */
  private static final Pattern NARROW = Pattern.compile("(?<=\\d)[\\u00A0\\u202F](?=\\d)");

  /** A typed blank may part two numbers as well, so threes of digits are one number only where a unit or a decimal part shows that it ends there. */
  private static final Pattern THOUSANDS =
      Pattern.compile("(?<![\\d.,])(?<!\\d )\\d{1,3}(?: \\d{3})+(?=[.,]\\d|[ \\u00A0\\u202F]*(?:(?![x×](?!\\p{L}))\\p{L}|[%/\\p{Sc}]))");
  private static final Pattern MARK = Pattern.compile("(?<![\\d.,\\p{L}])[.,](?=\\d)|(?<=\\d)[.,](?=\\d)");

  /** A text of the files as it is shown. */
  public String shown(String canonical) {
    return decimal == '.' ? canonical : MARK.matcher(canonical).replaceAll(mark -> mark.group().equals(".") ? "," : ".");
  }

  /** What was typed as the files have it; what is no number stays none. */
  public String canonical(String typed) {
    return shown(THOUSANDS.matcher(NARROW.matcher(typed).replaceAll("")).replaceAll(number -> number.group().replace(" ", "")));
  }

  /** Whether a text of the files has a comma in a number, as it has where another mark was typed than the user's. */
  public static boolean isOther(String canonical) {
    return MARK.matcher(canonical).results().anyMatch(mark -> mark.group().equals(","));
  }
}
