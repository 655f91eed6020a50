package hankbook.yarn;

/**
 * The mean colour of some points of a picture, as the eye sees them from so far away that they are one: the mean of their light. The numbers of sRGB do not
 * grow as light does, so that their own mean would come out too dark; they are turned into light and back by IEC 61966-2-1.
 */
public final class MeanColour {
  private double red;
  private double green;
  private double blue;
  private int points;

  /** Counts one more point. */
  public void add(ScreenColour point) {
    red += light(point.red());
    green += light(point.green());
    blue += light(point.blue());
    points++;
  }

  /**
   * The mean of the points so far.
   *
   * @throws IllegalStateException if there are none
   */
  public ScreenColour mean() {
    if (points == 0) {
      throw new IllegalStateException("no point was counted");
    }
    return new ScreenColour(shown(red / points), shown(green / points), shown(blue / points));
  }

  private static double light(int shown) {
    double part = shown / 255.0;
    return part <= 0.04045 ? part / 12.92 : Math.pow((part + 0.055) / 1.055, 2.4);
  }

  private static int shown(double light) {
    double part = light <= 0.0031308 ? light * 12.92 : 1.055 * Math.pow(light, 1 / 2.4) - 0.055;
    return Math.clamp(Math.round(part * 255), 0, 255);
  }
}
