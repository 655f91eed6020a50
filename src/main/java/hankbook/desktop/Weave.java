package hankbook.desktop;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Random;
import javafx.scene.image.PixelWriter;
import javafx.scene.image.WritableImage;
import javafx.scene.paint.Color;
import javafx.scene.paint.ImagePattern;
import javafx.scene.paint.Paint;

/**
 * Paints yarn colours as plain weave, faintly, so that a swatch looks like cloth and keeps its colour. No two threads are quite alike, as in cloth, which also keeps large
 * swatches from looking printed. Used from the screen's thread only.
 */
final class Weave {
  /** Image pixels to a thread: enough for a screen at twice the scale; the size at which a thread is drawn. */
  private static final int PIXELS = 8;

  private static final double DRAWN = 4;

  /** Threads until the cloth repeats, an even number of them. */
  private static final int THREADS = 12;

  /** How much lighter and darker a thread is at its middle and at its edge, in parts of what the screen shows from black to white. */
  private static final double DEPTH = 0.075;

  /** How far under lies the thread that is crossed over. */
  private static final double UNDER = 0.3;

  private static final double UNLIKE = 0.22;
  private static final int KEPT = 512;
  private static final long SEED = 7;
  private static final Map<String, Paint> WOVEN = new LinkedHashMap<>();

  private Weave() {}

  /** The paint of a colour such as {@code #2f5d8a}. */
  static Paint of(String hex) {
    Paint woven = WOVEN.remove(hex);
    Paint now = woven == null ? woven(Color.web(hex)) : woven;
    WOVEN.put(hex, now);
    if (WOVEN.size() > KEPT) {
      WOVEN.remove(WOVEN.keySet().iterator().next());
    }
    return now;
  }

  private static Paint woven(Color colour) {
    double[] warp = threads(new Random(SEED));
    double[] weft = threads(new Random(SEED + 1));
    int side = THREADS * PIXELS;
    WritableImage tile = new WritableImage(side, side);
    PixelWriter pixels = tile.getPixelWriter();
    for (int y = 0; y < side; y++) {
      for (int x = 0; x < side; x++) {
        boolean warpOver = (x / PIXELS + y / PIXELS) % 2 == 0;
        double light = warpOver ? round(x) + swell(y) + warp[x / PIXELS] : round(y) + swell(x) + weft[y / PIXELS] - UNDER;
        pixels.setColor(x, y, shaded(colour, light * DEPTH));
      }
    }
    return new ImagePattern(tile, 0, 0, THREADS * DRAWN, THREADS * DRAWN, false);
  }

  /** How much lighter or darker each thread is than the next. */
  private static double[] threads(Random random) {
    return random.doubles(THREADS, -UNLIKE, UNLIKE).toArray();
  }

  /** Across a thread, from −1 at its edge to 1 along its middle. */
  private static double round(int pixel) {
    return 2 * arch(pixel) - 1;
  }

  /** Along a thread, where it rises over the one it crosses. */
  private static double swell(int pixel) {
    return 0.5 * arch(pixel) - 0.35;
  }

  private static double arch(int pixel) {
    return Math.sin(Math.PI * (pixel % PIXELS + 0.5) / PIXELS);
  }

  /** Lighter or darker by the same step whatever the colour; near black and near white, where there is no room to one side, all of it goes to the other. */
  private static Color shaded(Color colour, double light) {
    double most = Math.max(colour.getRed(), Math.max(colour.getGreen(), colour.getBlue()));
    double least = Math.min(colour.getRed(), Math.min(colour.getGreen(), colour.getBlue()));
    double moved = light + Math.max(0, DEPTH - most) - Math.max(0, least + DEPTH - 1);
    return Color.color(channel(colour.getRed() + moved), channel(colour.getGreen() + moved), channel(colour.getBlue() + moved));
  }

  private static double channel(double value) {
    return Math.clamp(value, 0, 1);
  }
}
