package hankbook.desktop;

import hankbook.measure.Unreadable;
import java.util.Comparator;
import java.util.List;
import java.util.function.ToDoubleFunction;
import javafx.geometry.Rectangle2D;

/**
 * Where the window stands while it is not maximised, in the screens' own units, and whether it is.
 *
 * @param width more than 0
 * @param height more than 0
 */
record WindowPlace(int x, int y, int width, int height, boolean maximised) {
  /** Of the title, by which a window is taken hold of, this much must be seen. */
  private static final int SEEN_WIDTH = 100;

  private static final int SEEN_HEIGHT = 30;

  WindowPlace {
    if (width <= 0 || height <= 0) {
      throw new Unreadable(width + " × " + height, "a size of more than nothing");
    }
  }

  /** The same place, maximised or not. */
  WindowPlace maximised(boolean now) {
    return new WindowPlace(x, y, width, height, now);
  }

  /**
   * The place itself if the window can be taken hold of there and is not larger than all screens together; else the nearest place, and if need be a smaller size, on
   * the screen that shows most of it.
   *
   * @param screens what of each screen a window may cover, the main one first; without any the place is left alone
   */
  WindowPlace onto(List<Rectangle2D> screens) {
    if (screens.isEmpty() || (fits(screens) && screens.stream().anyMatch(this::isWithinReach))) {
      return this;
    }
    Rectangle2D main = screens.getFirst();
    Rectangle2D best = screens.stream().max(Comparator.comparingDouble(this::seen).thenComparing(screen -> screen.equals(main))).orElse(main);
    int wide = (int) Math.min(width, best.getWidth());
    int high = (int) Math.min(height, best.getHeight());
    return new WindowPlace(within(x, best.getMinX(), best.getMaxX() - wide), within(y, best.getMinY(), best.getMaxY() - high), wide, high, maximised);
  }

  private static int within(int at, double least, double most) {
    return (int) Math.clamp(at, Math.ceil(least), Math.max(Math.ceil(least), Math.floor(most)));
  }

  private boolean fits(List<Rectangle2D> screens) {
    double across = greatest(screens, Rectangle2D::getMaxX) - least(screens, Rectangle2D::getMinX);
    double down = greatest(screens, Rectangle2D::getMaxY) - least(screens, Rectangle2D::getMinY);
    return width <= across && height <= down;
  }

  private boolean isWithinReach(Rectangle2D screen) {
    return overlap(x, (double) x + width, screen.getMinX(), screen.getMaxX()) >= Math.min(width, SEEN_WIDTH)
        && y >= screen.getMinY() && y + (double) SEEN_HEIGHT <= screen.getMaxY();
  }

  private double seen(Rectangle2D screen) {
    return overlap(x, (double) x + width, screen.getMinX(), screen.getMaxX()) * overlap(y, (double) y + height, screen.getMinY(), screen.getMaxY());
  }

  private static double overlap(double from, double to, double least, double most) {
    return Math.max(0, Math.min(to, most) - Math.max(from, least));
  }

  private static double greatest(List<Rectangle2D> screens, ToDoubleFunction<Rectangle2D> of) {
    return screens.stream().mapToDouble(of).max().orElse(0);
  }

  private static double least(List<Rectangle2D> screens, ToDoubleFunction<Rectangle2D> of) {
    return screens.stream().mapToDouble(of).min().orElse(0);
  }
}
