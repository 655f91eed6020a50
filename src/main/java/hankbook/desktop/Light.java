package hankbook.desktop;

import javafx.scene.paint.Color;

/**
 * An amount of light, which can be added up as the eye does from afar; sRGB values cannot. The curve between the two is that of IEC 61966-2-1.
 *
 * @param red from 0 to 1 of white
 * @param green from 0 to 1 of white
 * @param blue from 0 to 1 of white
 */
record Light(double red, double green, double blue) {
  static final Light NONE = new Light(0, 0, 0);
  private static final int STEPS = 4096;
  private static final int[] CODES = codes();

  static Light of(Color colour) {
    return new Light(linear(colour.getRed()), linear(colour.getGreen()), linear(colour.getBlue()));
  }

  private static double linear(double code) {
    return code <= 0.04045 ? code / 12.92 : Math.pow((code + 0.055) / 1.055, 2.4);
  }

  private static int[] codes() {
    int[] codes = new int[STEPS + 1];
    for (int i = 0; i <= STEPS; i++) {
      double light = (double) i / STEPS;
      codes[i] = (int) Math.round(255 * (light <= 0.0031308 ? 12.92 * light : 1.055 * Math.pow(light, 1 / 2.4) - 0.055));
    }
    return codes;
  }

  /** This and so much of another. */
  Light plus(Light other, double part) {
    return new Light(red + other.red * part, green + other.green * part, blue + other.blue * part);
  }

  /** As an opaque pixel. */
  int argb() {
    return 0xff000000 | code(red) << 16 | code(green) << 8 | code(blue);
  }

  private static int code(double light) {
    return CODES[(int) Math.round(STEPS * Math.clamp(light, 0, 1))];
  }
}
