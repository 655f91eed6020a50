package hankbook.desktop;

import static org.assertj.core.api.Assertions.assertThat;

import hankbook.exchange.BadInput;
import hankbook.exchange.StockFile;
import hankbook.studio.ShelfSkein;
import hankbook.studio.shelf.GroupOrder;
import hankbook.yarn.Doubts;
import hankbook.yarn.YarnColour;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class ShelfGroupsTest {
  private static final int SKEINS = 5_000;
  private static final int COLOURS = 250;

  private final ShelfGroups groups = new ShelfGroups();

  @Test
  void fiveThousandSkeinsStandInTheirGroupsAndOneOpensToItsOwn() {
    groups.show(skeins(), false);
    assertThat(groups.groups()).hasSize(COLOURS);
    assertThat(groups.lines()).hasSize(COLOURS);
    groups.open(groups.groups().get(1));
    assertThat(groups.lines()).hasSize(COLOURS + SKEINS / COLOURS);
    assertThat(groups.lines().get(2)).isInstanceOfSatisfying(ShelfLine.OfSkein.class, line -> assertThat(groups.groupOf(line)).isSameAs(groups.groups().get(1)));
    groups.close(groups.groups().get(1));
    assertThat(groups.lines()).hasSize(COLOURS);
  }

  @Test
  void whatIsOpenStaysOpenWhenTheShelfIsReadAnewOrOrderedOtherwise() {
    groups.show(skeins(), false);
    YarnColour opened = groups.groups().get(3).yarn();
    groups.open(groups.groups().get(3));
    groups.show(skeins(), false);
    groups.orderProperty().set(GroupOrder.HELD);
    assertThat(groups.groups().stream().filter(row -> row.openProperty().get())).extracting(GroupRow::yarn).containsExactly(opened);
  }

  @Test
  void aFewAnswersAreShownAtOnceAndManyAreNot() {
    groups.show(skeins().subList(0, 3), true);
    assertThat(groups.lines()).hasSize(3 + groups.groups().size());
    groups.show(skeins(), true);
    assertThat(groups.lines()).hasSize(COLOURS);
  }

  @Test
  void nearnessIsToldOnlyInThatOrder() {
    groups.pickedProperty().set("#2f5d8a");
    groups.show(skeins(), false);
    assertThat(groups.groups()).allSatisfy(row -> assertThat(row.apart()).isEmpty());
    groups.orderProperty().set(GroupOrder.NEARNESS);
    assertThat(groups.groups().getFirst().apart()).matches("\\d+\\.\\d");
  }

  private static List<SkeinRow> skeins() {
    StringBuilder stock = new StringBuilder("code,yarn,colour,hex,length\n");
    IntStream.range(0, SKEINS).forEach(i -> stock.append("S%05d,Tussock %d,Colour %d,#%06x,%d m\n".formatted(i, i % COLOURS % 7, i % COLOURS, i % COLOURS * 65_537 % 0xffffff, 50 + i % 900)));
    try {
      return StockFile.read("many.csv", stock.toString()).stream().map(skein -> SkeinRow.of(new ShelfSkein(skein, skein.holds(), Map.of(), Map.of()), Doubts.DEFAULT)).toList();
    } catch (BadInput broken) {
      throw new IllegalStateException(broken);
    }
  }
}
