package hankbook.desktop;

import java.util.HashMap;
import java.util.Map;
import javafx.scene.image.PixelWriter;
import javafx.scene.image.WritableImage;
import javafx.scene.paint.Color;
import javafx.scene.paint.ImagePattern;
import javafx.scene.paint.Paint;

/** Paints yarn colours as plain weave, faintly, so that a swatch looks like cloth and keeps its colour. Used from the screen's thread only. */
final class Weave {
  /** Image pixels to a thread, and the size at which a thread is drawn. */
  private static final int PIXELS = 8;

  private static final double DRAWN = 4;
  private static final double DEPTH = 0.08;
  private static final Map<String, Paint> WOVEN = new HashMap<>();

  private Weave() {}

  /** The paint of a colour such as {@code #2f5d8a}. */
  static Paint of(String hex) {
    return WOVEN.computeIfAbsent(hex, it -> woven(Color.web(it)));
  }

  private static Paint woven(Color colour) {
    WritableImage tile = new WritableImage(2 * PIXELS, 2 * PIXELS);
    PixelWriter pixels = tile.getPixelWriter();
    for (int y = 0; y < 2 * PIXELS; y++) {
      for (int x = 0; x < 2 * PIXELS; x++) {
        boolean warpOver = (x / PIXELS + y / PIXELS) % 2 == 0;
        pixels.setColor(x, y, shaded(colour, roundness(warpOver ? x : y) - (warpOver ? 0 : 0.15)));
      }
    }
    return new ImagePattern(tile, 0, 0, 2 * DRAWN, 2 * DRAWN, false);
  }

  /** From −1 at the edge of a thread to 1 along its middle. */
  private static double roundness(int pixel) {
    double across = (pixel % PIXELS + 0.5) / PIXELS;
    return 2 * Math.sin(Math.PI * across) - 1;
  }

  private static Color shaded(Color colour, double light) {
    return light >= 0
        ? colour.interpolate(Color.WHITE, light * DEPTH)
        : colour.interpolate(Color.BLACK, -light * DEPTH);
  }
}
