package hankbook.studio.shelf;

import static org.assertj.core.api.Assertions.assertThat;

import hankbook.measure.Length;
import hankbook.yarn.Colour;
import hankbook.yarn.ColourDifference;
import hankbook.yarn.FibreFamily;
import hankbook.yarn.ShelfColours;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class GroupOrderTest {
  private static final List<SkeinGroup> GROUPS = SkeinGroup.of(Shelves.SAMPLE);
  private static final Colour PICKED = Colour.ofHex("#34618c");

  @Test
  void groupsHoldEverySkeinOnceAndSumToTheShelf() {
    assertThat(GROUPS.stream().flatMap(group -> group.skeins().stream())).containsExactlyInAnyOrderElementsOf(Shelves.SAMPLE);
    assertThat(GROUPS).extracting(SkeinGroup::yarn).doesNotHaveDuplicates();
    assertThat(GROUPS).allSatisfy(group -> assertThat(group.free().plus(group.reserved()).plus(group.onLoom())).isEqualTo(group.held()));
    Length held = Shelves.SAMPLE.stream().map(skein -> skein.shelf().skein().holds()).reduce(Length.ZERO, Length::plus);
    assertThat(GROUPS.stream().map(SkeinGroup::held).reduce(Length.ZERO, Length::plus)).isEqualTo(held);
  }

  @ParameterizedTest
  @EnumSource(GroupOrder.class)
  void anOrderLosesNoGroup(GroupOrder order) {
    assertThat(order.sorted(GROUPS, Optional.of(PICKED))).containsExactlyInAnyOrderElementsOf(GROUPS);
  }

  @Test
  void theMostMetresComeFirst() {
    assertThat(GroupOrder.HELD.sorted(GROUPS, Optional.empty())).extracting(SkeinGroup::held).isSortedAccordingTo((one, other) -> other.compareTo(one));
  }

  /** Held against the list that the command line gives for a colour of a draft. */
  @Test
  void theNearestComesFirstAndUnknownColoursLast() {
    List<SkeinGroup> sorted = GroupOrder.NEARNESS.sorted(GROUPS, Optional.of(PICKED));
    List<ColourDifference> apart = sorted.stream().flatMap(group -> GroupOrder.apart(group, PICKED).stream()).toList();
    assertThat(apart).isSorted();
    ShelfColours colours = new ShelfColours(Shelves.SAMPLE.stream().map(skein -> skein.shelf().skein()).toList(), Optional.empty());
    assertThat(sorted.getFirst().yarn()).isEqualTo(colours.nearest("#34618c").getFirst().yarn());
    assertThat(sorted.stream().dropWhile(group -> group.colour().isPresent())).allMatch(group -> group.colour().isEmpty());
  }

  @Test
  void oneKindOfFibreStandsTogether() {
    List<Set<FibreFamily>> kinds = GroupOrder.FIBRE.sorted(GROUPS, Optional.empty()).stream().map(group -> FibreFamily.of(group.fibre())).toList();
    long changes = 1;
    for (int i = 1; i < kinds.size(); i++) {
      changes += kinds.get(i).equals(kinds.get(i - 1)) ? 0 : 1;
    }
    assertThat(changes).isEqualTo(kinds.stream().distinct().count());
  }
}
