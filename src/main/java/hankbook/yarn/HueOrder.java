package hankbook.yarn;

import java.util.Comparator;

/**
 * The order in which colours are hung side by side: round the hues from red by yellow, green and blue to purple, in each hue the light before the dark; then those too
 * near grey to have a hue, from white to black.
 */
public final class HueOrder implements Comparator<Colour> {
  /** Below this chroma hardly anyone sees a hue; common practice. */
  private static final double GREY = 8;

  /** Between purple and red, so that pinks are not torn apart. */
  private static final double SEAM = 345;

  /** Hues so near are one hue, so that light and dark of it stand together. */
  private static final double STEP = 15;

  private static final Comparator<Colour> ORDER =
      Comparator.comparingInt((Colour colour) -> isGrey(colour) ? 1 : 0)
          .thenComparingDouble(colour -> isGrey(colour) ? 0 : Math.floor((colour.hue() - SEAM + 360) % 360 / STEP))
          .thenComparing(Comparator.comparingDouble(Colour::lightness).reversed())
          .thenComparingDouble(Colour::hue)
          .thenComparingDouble(Colour::chroma);

  private static boolean isGrey(Colour colour) {
    return colour.chroma() < GREY;
  }

  @Override
  public int compare(Colour one, Colour other) {
    return ORDER.compare(one, other);
  }
}
