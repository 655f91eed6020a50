package hankbook.studio.shelf;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.HashSet;
import java.util.List;
import java.util.OptionalInt;
import java.util.Set;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;

class WallLayoutProperties {
  private static final double NEAR = 1e-6;

  @Property(tries = 300)
  void each_tile_takes_its_part_of_the_wall(
      @ForAll("amounts") List<Long> amounts, @ForAll @DoubleRange(min = 50, max = 3000) double width, @ForAll @DoubleRange(min = 50, max = 2000) double height) {
    List<WallLayout.Tile> tiles = WallLayout.of(amounts, width, height).tiles();
    double whole = amounts.stream().mapToDouble(Long::doubleValue).sum();
    assertThat(tiles).hasSameSizeAs(amounts);
    for (int i = 0; i < tiles.size(); i++) {
      assertThat(tiles.get(i).width() * tiles.get(i).height()).isCloseTo(width * height * amounts.get(i) / whole, within(NEAR * width * height));
    }
  }

  @Property(tries = 300)
  void the_wall_is_filled_and_nothing_overlaps_or_hangs_over_its_edge(
      @ForAll("amounts") List<Long> amounts, @ForAll @DoubleRange(min = 50, max = 3000) double width, @ForAll @DoubleRange(min = 50, max = 2000) double height) {
    List<WallLayout.Tile> tiles = WallLayout.of(amounts, width, height).tiles();
    double area = tiles.stream().mapToDouble(tile -> tile.width() * tile.height()).sum();
    assertThat(area).isCloseTo(width * height, within(NEAR * width * height));
    for (int i = 0; i < tiles.size(); i++) {
      WallLayout.Tile one = tiles.get(i);
      assertThat(one.x()).isGreaterThanOrEqualTo(0);
      assertThat(one.x() + one.width()).isLessThanOrEqualTo(width + NEAR * width);
      assertThat(one.y() + one.height()).isLessThanOrEqualTo(height + NEAR * height);
      for (WallLayout.Tile other : tiles.subList(0, i)) {
        assertThat(overlap(one.x(), one.width(), other.x(), other.width()) * overlap(one.y(), one.height(), other.y(), other.height())).isLessThan(NEAR * width * height);
      }
    }
  }

  @Property(tries = 200)
  void tiles_are_read_like_a_page(@ForAll("amounts") List<Long> amounts) {
    List<WallLayout.Tile> tiles = WallLayout.of(amounts, 800, 500).tiles();
    for (int i = 1; i < tiles.size(); i++) {
      WallLayout.Tile before = tiles.get(i - 1);
      WallLayout.Tile tile = tiles.get(i);
      assertThat(tile.row() == before.row() ? tile.x() >= before.x() : tile.row() == before.row() + 1 && tile.x() == 0).isTrue();
    }
  }

  @Property(tries = 200)
  void every_tile_is_reached_by_keys_and_up_undoes_nothing_but_rows(@ForAll("amounts") List<Long> amounts) {
    WallLayout wall = WallLayout.of(amounts, 800, 500);
    Set<Integer> reached = new HashSet<>();
    for (OptionalInt at = OptionalInt.of(0); at.isPresent(); at = wall.next(at.getAsInt(), WallLayout.Way.RIGHT)) {
      int from = at.getAsInt();
      reached.add(from);
      wall.next(from, WallLayout.Way.DOWN).ifPresent(below -> assertThat(wall.tiles().get(below).row()).isEqualTo(wall.tiles().get(from).row() + 1));
      wall.next(from, WallLayout.Way.UP).ifPresent(above -> assertThat(wall.tiles().get(above).row()).isEqualTo(wall.tiles().get(from).row() - 1));
    }
    assertThat(reached).hasSameSizeAs(amounts);
  }

  @Property(tries = 50)
  void tiles_of_like_amounts_are_nearly_square(@ForAll("many") List<Long> amounts) {
    List<WallLayout.Tile> tiles = WallLayout.of(amounts, 900, 600).tiles();
    List<WallLayout.Tile> full = tiles.stream().filter(tile -> tile.row() < tiles.getLast().row()).toList();
    assertThat(full).allSatisfy(tile -> assertThat(Math.max(tile.width() / tile.height(), tile.height() / tile.width())).isLessThan(4));
  }

  private static double overlap(double one, double oneLength, double other, double otherLength) {
    return Math.max(0, Math.min(one + oneLength, other + otherLength) - Math.max(one, other));
  }

  @Provide
  Arbitrary<List<Long>> amounts() {
    return Arbitraries.longs().between(1, 50_000_000).list().ofMinSize(1).ofMaxSize(60);
  }

  @Provide
  Arbitrary<List<Long>> many() {
    return Arbitraries.longs().between(10_000_000, 20_000_000).list().ofMinSize(20).ofMaxSize(200);
  }
}
