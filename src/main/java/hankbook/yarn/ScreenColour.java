package hankbook.yarn;

import hankbook.measure.Unreadable;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A colour as a screen shows it (sRGB, IEC 61966-2-1).
 *
 * @param red from 0 to 255
 * @param green from 0 to 255
 * @param blue from 0 to 255
 */
public record ScreenColour(int red, int green, int blue) {
  private static final String WANTED = "a colour such as #2f5d8a or 47, 93, 138";
  private static final int MOST = 255;
  private static final Pattern HEX = Pattern.compile("#?([0-9a-f]{6})");
  private static final Pattern NUMBERS = Pattern.compile("(\\d{1,3})(?:\\s*[,;]\\s*|\\s+)(\\d{1,3})(?:\\s*[,;]\\s*|\\s+)(\\d{1,3})");

  public ScreenColour {
    if (Math.min(red, Math.min(green, blue)) < 0 || Math.max(red, Math.max(green, blue)) > MOST) {
      throw new Unreadable(red + ", " + green + ", " + blue, "three numbers from 0 to 255");
    }
  }

  /**
   * Reads a colour as it is typed: {@code #2f5d8a} in letters of either case, with or without its sign, or three numbers from 0 to 255.
   *
   * @throws Unreadable if it is neither
   */
  public static ScreenColour parse(String text) {
    String typed = text.strip().toLowerCase(Locale.ROOT);
    Matcher hex = HEX.matcher(typed);
    if (hex.matches()) {
      return ofRgb(Integer.parseInt(hex.group(1), 16));
    }
    Matcher numbers = NUMBERS.matcher(typed);
    if (numbers.matches()) {
      return new ScreenColour(Integer.parseInt(numbers.group(1)), Integer.parseInt(numbers.group(2)), Integer.parseInt(numbers.group(3)));
    }
    throw new Unreadable(text, WANTED);
  }

  /** Of a point of a picture: eight bits of red, green and blue each; what stands above them does not count. */
  public static ScreenColour ofRgb(int rgb) {
    return new ScreenColour(rgb >> 16 & MOST, rgb >> 8 & MOST, rgb & MOST);
  }

  /** As {@code #rrggbb} in small letters. */
  public String hex() {
    return String.format(Locale.ROOT, "#%02x%02x%02x", red, green, blue);
  }
}
