package hankbook.yarn;

import hankbook.measure.Unreadable;
import java.util.Locale;

/**
 * How far apart two colours look: CIEDE2000 (ISO/CIE 11664-6) with all its weights 1. About 1 can just be told apart side by side, and
 * black lies 100 from white.
 *
 * <p>Written out after G. Sharma, W. Wu, E. N. Dalal, Color Research and Application 30(1), 2005, whose pairs it gives to their four
 * places; the one small library that has the formula for this machine, tried first, missed 28 of the 34.
 *
 * @param deltaE at least 0
 */
public record ColourDifference(double deltaE) implements Comparable<ColourDifference> {
  private static final double CHROMA_KNEE = Math.pow(25, 7);

  public ColourDifference {
    if (!(deltaE >= 0)) {
      throw new Unreadable(Double.toString(deltaE), "a colour difference of at least 0");
    }
  }

  /** A colour by lightness, chroma and hue in degrees, its red to green stretched where the colours are dull. */
  private record Hue(double lightness, double chroma, double degrees) {
    static Hue of(Colour colour, double stretch) {
      double redGreen = stretch * colour.redGreen();
      double degrees = Math.toDegrees(Math.atan2(colour.yellowBlue(), redGreen));
      return new Hue(colour.lightness(), Math.hypot(redGreen, colour.yellowBlue()), degrees < 0 ? degrees + 360 : degrees);
    }
  }

  /** Between two colours, either way round. */
  public static ColourDifference between(Colour one, Colour other) {
    double dull = knee((chroma(one) + chroma(other)) / 2);
    double stretch = 1 + 0.5 * (1 - dull);
    return between(Hue.of(one, stretch), Hue.of(other, stretch));
  }

  private static double chroma(Colour colour) {
    return Math.hypot(colour.redGreen(), colour.yellowBlue());
  }

  private static double knee(double chroma) {
    return Math.sqrt(Math.pow(chroma, 7) / (Math.pow(chroma, 7) + CHROMA_KNEE));
  }

  private static ColourDifference between(Hue one, Hue other) {
    boolean grey = one.chroma() * other.chroma() == 0;
    double turn = grey ? 0 : turn(one.degrees(), other.degrees());
    double middleHue = grey ? one.degrees() + other.degrees() : middle(one.degrees(), other.degrees());
    double chroma = (one.chroma() + other.chroma()) / 2;
    double squared = Math.pow((one.lightness() + other.lightness()) / 2 - 50, 2);
    double lightness = (other.lightness() - one.lightness()) / (1 + 0.015 * squared / Math.sqrt(20 + squared));
    double saturation = (other.chroma() - one.chroma()) / (1 + 0.045 * chroma);
    double hue = 2 * Math.sqrt(one.chroma() * other.chroma()) * sine(turn / 2) / (1 + 0.015 * chroma * hueWeight(middleHue));
    double blue = -2 * knee(chroma) * sine(60 * Math.exp(-Math.pow((middleHue - 275) / 25, 2)));
    double sum = lightness * lightness + saturation * saturation + hue * hue + blue * saturation * hue;
    return new ColourDifference(Math.sqrt(Math.max(0, sum)));
  }

  /** From one hue to the other by the shorter way. */
  private static double turn(double from, double to) {
    double turn = to - from;
    return turn > 180 ? turn - 360 : turn < -180 ? turn + 360 : turn;
  }

  private static double middle(double one, double other) {
    double sum = one + other;
    return Math.abs(one - other) <= 180 ? sum / 2 : (sum < 360 ? sum + 360 : sum - 360) / 2;
  }

  private static double hueWeight(double hue) {
    return 1 - 0.17 * cosine(hue - 30) + 0.24 * cosine(2 * hue) + 0.32 * cosine(3 * hue + 6) - 0.20 * cosine(4 * hue - 63);
  }

  private static double sine(double degrees) {
    return Math.sin(Math.toRadians(degrees));
  }

  private static double cosine(double degrees) {
    return Math.cos(Math.toRadians(degrees));
  }

  @Override
  public int compareTo(ColourDifference other) {
    return Double.compare(deltaE, other.deltaE);
  }

  /** To one place. */
  @Override
  public String toString() {
    return String.format(Locale.ROOT, "%.1f", deltaE);
  }
}
