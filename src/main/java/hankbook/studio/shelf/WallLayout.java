package hankbook.studio.shelf;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import java.util.stream.IntStream;

/**
 * A wall hung full: one tile for each amount, in their order from left to right and row below row. Each tile's area is its part of the wall as the amount is its part of
 * the whole; a row ends where one tile more would make its tiles less square.
 */
public final class WallLayout {
  private final List<Tile> tiles;

  private WallLayout(List<Tile> tiles) {
    this.tiles = List.copyOf(tiles);
  }

  /**
   * Where a tile hangs, in the measure of the wall.
   *
   * @param row which row from the top, from 0
   */
  public record Tile(double x, double y, double width, double height, int row) {
    double middle() {
      return x + width / 2;
    }
  }

  /** A way to go from a tile. */
  public enum Way {
    LEFT,
    RIGHT,
    UP,
    DOWN
  }

  /**
   * Hangs a wall.
   *
   * @param amounts each over 0
   * @param width of the wall, over 0
   * @param height of the wall, over 0
   */
  public static WallLayout of(List<Long> amounts, double width, double height) {
    if (!(width > 0) || !(height > 0) || amounts.stream().anyMatch(amount -> amount <= 0)) {
      throw new IllegalArgumentException("a wall of " + width + " by " + height + " with " + amounts);
    }
    double whole = amounts.stream().mapToDouble(Long::doubleValue).sum();
    List<Tile> tiles = new ArrayList<>();
    double y = 0;
    int row = 0;
    while (tiles.size() < amounts.size()) {
      int from = tiles.size();
      int to = end(amounts, from, whole, width, height);
      boolean last = to == amounts.size();
      double sum = sum(amounts, from, to);
      double rowHeight = last ? height - y : height * sum / whole;
      hang(tiles, amounts.subList(from, to), new Tile(0, y, width, rowHeight, row));
      y += rowHeight;
      row++;
    }
    return new WallLayout(tiles);
  }

  private static double sum(List<Long> amounts, int from, int to) {
    return amounts.subList(from, to).stream().mapToDouble(Long::doubleValue).sum();
  }

  /** Before which amount the row ends that begins with one: as long as its tiles become squarer on the whole. */
  private static int end(List<Long> amounts, int from, double whole, double width, double height) {
    double before = Double.POSITIVE_INFINITY;
    for (int to = from + 1; to <= amounts.size(); to++) {
      double longest = longest(amounts.subList(from, to), width, height * sum(amounts, from, to) / whole);
      if (longest > before) {
        return to - 1;
      }
      before = longest;
    }
    return amounts.size();
  }

  /** How many times longer than wide, or wider than long, the tiles of a row are in the mean. */
  private static double longest(List<Long> amounts, double width, double height) {
    double sum = sum(amounts, 0, amounts.size());
    return amounts.stream().mapToDouble(amount -> width * amount / sum / height).map(shape -> Math.max(shape, 1 / shape)).average().orElseThrow();
  }

  private static void hang(List<Tile> tiles, List<Long> amounts, Tile row) {
    double sum = sum(amounts, 0, amounts.size());
    double before = 0;
    for (long amount : amounts) {
      double left = row.width() * before / sum;
      before += amount;
      tiles.add(new Tile(left, row.y(), row.width() * before / sum - left, row.height(), row.row()));
    }
  }

  /** The tiles, in the order of the amounts. */
  public List<Tile> tiles() {
    return tiles;
  }

  /** The tile that is reached from one; none past the edge of the wall. To the sides the wall is read like a page, from the end of a row to the next. */
  public OptionalInt next(int from, Way way) {
    return switch (way) {
      case LEFT -> from > 0 ? OptionalInt.of(from - 1) : OptionalInt.empty();
      case RIGHT -> from < tiles.size() - 1 ? OptionalInt.of(from + 1) : OptionalInt.empty();
      case UP -> inRow(tiles.get(from).row() - 1, tiles.get(from).middle());
      case DOWN -> inRow(tiles.get(from).row() + 1, tiles.get(from).middle());
    };
  }

  /** The tile of a row that hangs over or under a place. */
  private OptionalInt inRow(int row, double middle) {
    return IntStream.range(0, tiles.size())
        .filter(tile -> tiles.get(tile).row() == row && tiles.get(tile).x() <= middle)
        .reduce((_, later) -> later);
  }
}
