package hankbook.desktop.colour;

import hankbook.yarn.MeanColour;
import hankbook.yarn.ScreenColour;

/** The points of a picture, in sRGB. */
public final class Photograph {
  /** How far around a point its colour is taken: a patch of 9 by 9 points, which evens out the grain of a picture and the shine of single fibres. */
  static final int REACH = 4;

  private final int width;
  private final int height;
  private final int[] points;

  /**
   * A picture.
   *
   * @param width of a line, at least 1
   * @param points of all its lines, as {@code 0xrrggbb}
   */
  public Photograph(int width, int[] points) {
    if (width < 1 || points.length == 0 || points.length % width != 0) {
      throw new IllegalArgumentException(points.length + " points, wanted whole lines of " + width);
    }
    this.width = width;
    this.height = points.length / width;
    this.points = points.clone();
  }

  int width() {
    return width;
  }

  int height() {
    return height;
  }

  /** The colour of one point; beyond an edge that of the point nearest to it. */
  int at(int x, int y) {
    return points[Math.clamp(y, 0, height - 1) * width + Math.clamp(x, 0, width - 1)];
  }

  /** The colour around a point: the mean of the light of its patch, as far as that lies in the picture. */
  ScreenColour around(Spot spot) {
    MeanColour mean = new MeanColour();
    for (int y = Math.max(0, spot.y() - REACH); y <= Math.min(height - 1, spot.y() + REACH); y++) {
      for (int x = Math.max(0, spot.x() - REACH); x <= Math.min(width - 1, spot.x() + REACH); x++) {
        mean.add(ScreenColour.ofRgb(at(x, y)));
      }
    }
    return mean.mean();
  }

  /** The nearest point that lies in the picture. */
  Spot within(Spot spot) {
    return new Spot(Math.clamp(spot.x(), 0, width - 1), Math.clamp(spot.y(), 0, height - 1));
  }

  Spot middle() {
    return new Spot(width / 2, height / 2);
  }
}
