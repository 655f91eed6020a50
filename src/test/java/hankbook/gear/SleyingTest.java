package hankbook.gear;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import hankbook.measure.Length;
import hankbook.measure.LengthUnit;
import hankbook.measure.Sett;
import hankbook.measure.Unreadable;
import java.util.List;
import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class SleyingTest {
  private static final Reed TWELVE = new Reed("12/in", Sett.perInch(12), Optional.of(Length.of(30, LengthUnit.INCH)));
  private static final Reed FIFTY = new Reed("50/10 cm", Sett.parse("50/10 cm"), Optional.empty());

  /** Reckoned by hand: 60 repeats of 5 ends in 3 dents are 180 dents, 15 inches at 12 to the inch, 20 ends to the inch. */
  @Test
  void threeHundredEndsSleyedTwoTwoOneInATwelveDentReedAreFifteenInchesWide() {
    Sleying sleying = new Sleying(TWELVE, Sley.parse("2-2-1"), 300);
    assertThat(sleying.dents()).isEqualTo(180);
    assertThat(sleying.repeats()).isEqualTo(60);
    assertThat(sleying.leftOver()).isZero();
    assertThat(sleying.width()).isEqualTo(Length.of(15, LengthUnit.INCH));
    assertThat(sleying.freeBefore()).hasValue(90);
    assertThat(sleying.freeAfter()).hasValue(90);
    assertThat(sleying.fromMiddle()).isEqualTo(Length.of(15, LengthUnit.INCH).minus(sleying.fromMiddle()));
    assertThat(new SleyChoice(Sett.perInch(20), TWELVE, Sley.parse("2-2-1")).off()).isEqualTo(BigFraction.ZERO);
  }

  @Test
  void endsLeftOverTakeTheDentsThatTheyFill() {
    Sleying sleying = new Sleying(TWELVE, Sley.parse("2-2-1"), 303);
    assertThat(sleying.leftOver()).isEqualTo(3);
    assertThat(sleying.dents()).isEqualTo(182);
    assertThat(sleying.freeBefore()).hasValue(89);
    assertThat(sleying.freeAfter()).hasValue(89);
  }

  /** Of 9 selvedge ends 5 stand at the left in 3 dents and 4 at the right in 2. */
  @Test
  void selvedgeEndsMayHaveDentsOfTheirOwn() {
    Sleying sleying = new Sleying(TWELVE, Sley.parse("1"), 109, new Sleying.Selvedge(9, 2));
    assertThat(sleying.ground()).isEqualTo(100);
    assertThat(sleying.dents()).isEqualTo(105);
  }

  @Test
  void moreThanTheReedHasIsRefusedWithTheNumbers() {
    assertThatThrownBy(() -> new Sleying(TWELVE, Sley.parse("1"), 361))
        .isInstanceOf(Unreadable.class)
        .hasMessage("found '361 dents for 361 ends sleyed 1', wanted at most the 360 that reed 12/in has in its 76.2 cm");
    assertThat(new Sleying(TWELVE, Sley.parse("1"), 360).freeBefore()).hasValue(0);
    assertThat(new Sleying(FIFTY, Sley.parse("1"), 100_000).freeBefore()).isEmpty();
  }

  @ParameterizedTest
  @CsvSource({"5, 3, 2-2-1", "4, 3, 1-1-2", "3, 2, 1-2", "7, 5, 1-1-2-1-2", "8, 5, 2-2-1-2-1", "6, 5, 1-1-1-1-2", "2, 1, 2"})
  void endsAreSpreadEvenlyOverTheDents(int ends, int dents, String sley) {
    assertThat(Sley.spread(ends, dents)).isEqualTo(Sley.parse(sley)).hasToString(sley);
  }

  @Test
  void theNearestWayStandsFirstAndOfEqualsTheSimplest() {
    List<SleyChoice> choices = SleyChoice.all(Sett.perInch(20), List.of(FIFTY, TWELVE));
    assertThat(choices.getFirst()).isEqualTo(new SleyChoice(Sett.perInch(20), TWELVE, Sley.parse("2-2-1")));
    assertThat(SleyChoice.all(Sett.perCentimetre(10), List.of(FIFTY)).getFirst().sley()).isEqualTo(Sley.parse("2"));
    assertThat(choices).isSortedAccordingTo((one, other) -> one.off().abs().compareTo(other.off().abs())).doesNotHaveDuplicates();
  }

  @Test
  void theSettItReallyGivesIsSaidInTheUnitThatWasAskedFor() {
    SleyChoice choice = new SleyChoice(Sett.perCentimetre(10), TWELVE, Sley.parse("2"));
    assertThat(choice.sett()).hasToString("9.45/cm");
    assertThat(choice.isWithin(BigFraction.of(5, 100))).isFalse();
    assertThat(choice.isWithin(BigFraction.of(6, 100))).isTrue();
    assertThat(choice.widthOf(240)).isEqualTo(Length.of(10, LengthUnit.INCH));
  }

  @ParameterizedTest
  @ValueSource(strings = {"", "2-", "-2", "0", "2-0-1", "two", "21", "2,2"})
  void whatIsNoSleyingIsRefused(String text) {
    assertThatThrownBy(() -> Sley.parse(text)).isInstanceOf(Unreadable.class).hasMessageEndingWith("wanted ends in each dent such as 2 or 2-2-1, 1 to 20 of them");
  }

  @Test
  void aReedHasDentsThatAReedCanHave() {
    assertThatThrownBy(() -> Reed.dents("twelve")).hasMessage("found 'twelve', wanted dents to a length such as 12/in or 50/10 cm");
    assertThatThrownBy(() -> new Reed("odd", Sett.parse("0.01/in"), Optional.empty())).hasMessage("found '0.01/in', wanted a reed of 1 to 1000 dents to 10 cm");
    assertThat(Reed.outright("the long one")).isEmpty();
    assertThat(Reed.outright("12/in")).contains(new Reed("12/in", Sett.perInch(12), Optional.empty()));
  }

  @Test
  void ofReedsWithTheSameDentsTheNarrowestThatTakesTheWarpIsMeant() {
    Reed narrow = new Reed("short twelve", Sett.perInch(12), Optional.of(Length.parse("40 cm")));
    Gear gear = new Gear(List.of(), List.of(TWELVE, narrow));
    assertThat(gear.reed("12/in", Length.parse("30 cm"))).contains(TWELVE);
    Gear byDents = new Gear(List.of(), List.of(new Reed("long twelve", Sett.perInch(12), TWELVE.width()), narrow));
    assertThat(byDents.reed("12/in", Length.parse("30 cm"))).contains(narrow);
    assertThat(byDents.reed("12/in", Length.parse("50 cm")).orElseThrow().name()).isEqualTo("long twelve");
    assertThat(byDents.reed("12/in", Length.parse("90 cm")).orElseThrow().name()).isEqualTo("long twelve");
    assertThat(byDents.reed("10/in", Length.parse("30 cm"))).isEmpty();
  }
}
