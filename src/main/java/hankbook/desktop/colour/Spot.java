package hankbook.desktop.colour;

/**
 * A point of a picture.
 *
 * @param x from the left, the first being 0
 * @param y from the top, the first being 0
 */
record Spot(int x, int y) {
  Spot moved(int right, int down) {
    return new Spot(x + right, y + down);
  }
}
