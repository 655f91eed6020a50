package hankbook.yarn;

import hankbook.measure.Unreadable;
import java.util.regex.Pattern;

/**
 * A colour as the eye orders colours: CIELAB (ISO/CIE 11664-4) for daylight, D65.
 *
 * @param lightness L*, 0 for black to 100 for white
 * @param redGreen a*, negative towards green
 * @param yellowBlue b*, negative towards blue
 */
public record Colour(double lightness, double redGreen, double yellowBlue) {
  private static final Pattern HEX = Pattern.compile("#[0-9a-f]{6}");

  /** The white of sRGB, D65, from its chromaticity x = 0.3127, y = 0.3290. */
  private static final double WHITE_X = 0.3127 / 0.3290;
  private static final double WHITE_Z = (1 - 0.3127 - 0.3290) / 0.3290;

  /** Below this part of white CIELAB goes on in a straight line. */
  private static final double KNEE = 6.0 / 29;

  /**
   * The colour that a screen shows (sRGB, IEC 61966-2-1).
   *
   * @param hex as {@code #rrggbb} in small letters
   * @throws Unreadable if it is no such colour
   */
  public static Colour ofHex(String hex) {
    if (!HEX.matcher(hex).matches()) {
      throw new Unreadable(hex, "a colour such as #2f5d8a");
    }
    double red = light(hex, 1);
    double green = light(hex, 3);
    double blue = light(hex, 5);
    double x = bent((0.4124 * red + 0.3576 * green + 0.1805 * blue) / WHITE_X);
    double y = bent(0.2126 * red + 0.7152 * green + 0.0722 * blue);
    double z = bent((0.0193 * red + 0.1192 * green + 0.9505 * blue) / WHITE_Z);
    return new Colour(116 * y - 16, 500 * (x - y), 200 * (y - z));
  }

  /** One channel as light, from 0 to 1. */
  private static double light(String hex, int from) {
    double shown = Integer.parseInt(hex, from, from + 2, 16) / 255.0;
    return shown <= 0.04045 ? shown / 12.92 : Math.pow((shown + 0.055) / 1.055, 2.4);
  }

  private static double bent(double part) {
    return part > KNEE * KNEE * KNEE ? Math.cbrt(part) : part / (3 * KNEE * KNEE) + 4.0 / 29;
  }

  /** How far it is from grey, from 0. */
  public double chroma() {
    return Math.hypot(redGreen, yellowBlue);
  }

  /** Where it stands in the round of hues, in degrees from 0 to under 360: about 40 red, 100 yellow, 135 green, 270 blue, 330 purple. */
  public double hue() {
    double degrees = Math.toDegrees(Math.atan2(yellowBlue, redGreen));
    return degrees < 0 ? degrees + 360 : degrees;
  }

  /** How far apart two colours look. */
  public ColourDifference differenceTo(Colour other) {
    return ColourDifference.between(this, other);
  }
}
