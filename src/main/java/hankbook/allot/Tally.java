package hankbook.allot;

/**
 * What has been spent so far on the way through the skeins, as far as the {@link Aim} counts it.
 *
 * @param lots dye lots, counted per use
 * @param unopened unopened skeins broken into
 * @param touched skeins touched
 * @param kept whether a touched skein has set aside the remnant aimed at
 * @param use what the present lot may serve for
 */
record Tally(int lots, int unopened, int touched, boolean kept, Use use) {
  static final Tally START = new Tally(0, 0, 0, false, Use.NONE);
}
