package hankbook.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.entry;

import hankbook.measure.Length;
import hankbook.measure.Sett;
import hankbook.yarn.YarnColour;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Size;
import org.junit.jupiter.api.Test;

class SectionSumTest {
  private static final YarnColour CHALK = new YarnColour("Skerry 16/2", "Chalk");

  /** (3 × 36 + 12 + 9) × 4 = 516, by hand: 108 + 21 = 129 units. */
  @Test
  void unitsAreAddedUpBothWays() {
    SectionSum sum = SectionSum.of(new Sections(List.of(new Section("star", 3, 36)), 4, 12, 9), Sett.perCentimetre(10), 8);
    assertThat(sum.units()).isEqualTo(129);
    assertThat(sum.endsByStretch()).isEqualTo(516);
    assertThat(sum.endsByUnits()).isEqualTo(516);
    assertThat(sum.ends()).isEqualTo(524);
    assertThat(sum.rows()).extracting(SectionSum.Row::name).containsExactly("to the left", "star", "to the right");
    assertThat(sum.rows()).extracting(SectionSum.Row::first).containsExactly(1, 49, 481);
    assertThat(sum.rows()).extracting(SectionSum.Row::last).containsExactly(48, 480, 516);
    assertThat(sum.rows()).extracting(SectionSum.Row::width).containsExactly(Length.parse("4.8 cm"), Length.parse("43.2 cm"), Length.parse("3.6 cm"));
    assertThat(sum.arithmetic()).isEqualTo("(12 + 3 x 36 + 9) x 4 + 8");
  }

  @Property(tries = 300, seed = "20261213")
  void bothSumsAndTheWidthsAgree(
      @ForAll @Size(min = 1, max = 6) List<@IntRange(min = 1, max = 50) Integer> units, @ForAll @IntRange(min = 1, max = 9) int perUnit,
      @ForAll @IntRange(max = 20) int left, @ForAll @IntRange(min = 3, max = 60) int perInch) {
    Sett sett = Sett.perInch(perInch);
    SectionSum sum = SectionSum.of(new Sections(units.stream().map(count -> new Section(2, count)).toList(), perUnit, left, 3), sett, 0);
    assertThat(sum.endsByStretch()).isEqualTo(sum.endsByUnits());
    assertThat(sum.rows().getLast().last()).isEqualTo(sum.ends());
    Length whole = Length.ofTenths(sett.widthOf(sum.ends()), java.math.RoundingMode.HALF_UP);
    assertThat(sum.width()).isEqualTo(whole);
  }

  /** One repeat of 36 units of 4 ends more: 144 ends, 14.4 cm, and of a warp of 4 m 576 m. */
  @Test
  void aChangeOfOneSectionTellsEndsWidthAndYarn() {
    Plan plan = plan(new OrderEntry(CHALK, new OrderEntry.Share(org.apache.commons.numbers.fraction.BigFraction.ONE), 1), Optional.empty());
    Sections sections = plan.warp().sections().orElseThrow();
    Plan changed = PlanVariants.withSections(plan, sections.with(1, new Section("star", 4, 36)));
    PlanChange change = PlanChange.of(plan, changed);
    assertThat(change.ends()).isEqualTo(144);
    assertThat(change.inReed()).isEqualTo(Length.parse("14.4 cm"));
    assertThat(change.finished()).isEqualTo(Length.parse("14.4 cm"));
    assertThat(change.yarn()).containsExactly(entry(CHALK, Length.metres(576)));
    assertThat(change.inProportion()).isFalse();
    assertThat(PlanChange.of(changed, plan).yarn()).containsExactly(entry(CHALK, Length.metres(576).negated()));
  }

  @Test
  void aWrittenOrderThatDoesNotAccountForTheNewEndsIsReckonedInProportion() {
    Plan plan = plan(new OrderEntry(CHALK, new OrderEntry.Written(), 1), Optional.of("516 Chalk"));
    Plan changed = PlanVariants.withSections(plan, plan.warp().sections().orElseThrow().with(1, new Section("star", 4, 36)));
    assertThat(PlanChange.of(plan, changed).inProportion()).isTrue();
    assertThat(PlanChange.of(plan, changed).yarn()).containsExactly(entry(CHALK, Length.metres(576)));
  }

  @Test
  void unitsBesideNoSectionAreRefused() {
    assertThatThrownBy(() -> new Sections(List.of(), 4, 12, 0)).hasMessage("found nothing, wanted sections, where there are units to the left or right of them");
    assertThatThrownBy(() -> new Sections(List.of(new Section(1, 1)), 0, 0, 0)).hasMessage("found '0', wanted ends per unit of at least 1");
  }

  private static Plan plan(OrderEntry order, Optional<String> written) {
    Sections sections = new Sections(List.of(new Section("star", 3, 36)), 4, 12, 9);
    Warp warp =
        new Warp(
            Sett.perCentimetre(10), OptionalInt.of(516), Optional.of(Length.metres(4)), 1, 0, List.of(order), written.map(Succession::parse), Optional.empty(),
            Optional.of(sections));
    return new Plan("Units", List.of(), warp, List.of(), Allowances.NONE, 1);
  }
}
