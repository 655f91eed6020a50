package hankbook.plan;

import static org.assertj.core.api.Assertions.assertThat;

import hankbook.measure.Length;
import hankbook.measure.Percentage;
import hankbook.measure.Sett;
import hankbook.yarn.YarnColour;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.apache.commons.numbers.fraction.BigFraction;
import org.junit.jupiter.api.Test;

class SettChangeTest {
  private static final YarnColour CHALK = new YarnColour("Skerry 16/2", "Chalk");

  /** By hand: 480 ends at 10/cm stand 48 cm in the reed, at 12/cm 40 cm; less a tenth 36 cm. 1000 picks of 48 cm are 480 m, of 40 cm 400 m. */
  @Test
  void theEndsStayAndTheWidthMovesWithTheWeft() {
    SettChange change = SettChange.of(plan(480, 0), Sett.perCentimetre(12));
    assertThat(change.ends()).isEqualTo(480);
    assertThat(change.before()).isEqualTo(new SettChange.State(Sett.perCentimetre(10), Length.parse("48 cm"), Length.parse("43.2 cm")));
    assertThat(change.after()).isEqualTo(new SettChange.State(Sett.perCentimetre(12), Length.parse("40 cm"), Length.parse("36 cm")));
    assertThat(change.wefts()).containsExactly(new SettChange.WeftChange(CHALK, Length.metres(480), Length.metres(400)));
    assertThat(change.wefts().getFirst().more()).isEqualTo(Length.metres(-80));
  }

  @Test
  void selvedgeEndsStayBesideTheWidth() {
    assertThat(SettChange.of(plan(488, 8), Sett.perCentimetre(12)).after().inReed()).isEqualTo(Length.parse("40 cm"));
  }

  @Test
  void aPlanThatReckonsItsEndsFromItsPiecesKeepsThem() {
    Piece scarf = new Piece("scarf", 1, Length.metres(2), Length.parse("45 cm"), Length.ZERO, Length.ZERO);
    Plan plan = new Plan("Scarf", List.of(scarf), warp(Sett.perCentimetre(10), OptionalInt.empty(), Optional.empty(), 0), List.of(), shrunk(), 1);
    SettChange change = SettChange.of(plan, Sett.perCentimetre(8));
    assertThat(change.ends()).isEqualTo(500);
    assertThat(change.after().inReed()).isEqualTo(Length.parse("62.5 cm"));
    assertThat(change.after().finished()).isEqualTo(Length.parse("56.25 cm"));
  }

  @Property(tries = 200, seed = "20261214")
  void theSameSettChangesNothingAndThereAndBackIsWhereItWas(@ForAll @IntRange(min = 10, max = 2_000) int ends, @ForAll @IntRange(min = 1, max = 40) int other) {
    SettChange none = SettChange.of(plan(ends, 0), Sett.perCentimetre(10));
    assertThat(none.after()).isEqualTo(none.before());
    assertThat(none.wefts()).allMatch(weft -> weft.more().isZero());
    SettChange there = SettChange.of(plan(ends, 0), Sett.perCentimetre(other));
    SettChange back = SettChange.of(plan(Sett.perCentimetre(other), ends, 0), Sett.perCentimetre(10));
    assertThat(back.after()).isEqualTo(there.before());
    assertThat(back.before()).isEqualTo(there.after());
  }

  private static Plan plan(int ends, int selvedge) {
    return plan(Sett.perCentimetre(10), ends, selvedge);
  }

  private static Plan plan(Sett sett, int ends, int selvedge) {
    Weft weft = new Weft(CHALK, Sett.perCentimetre(10), BigFraction.ONE, 1, BigFraction.ONE, Optional.of(Length.metres(1)));
    return new Plan("Scarf", List.of(), warp(sett, OptionalInt.of(ends), Optional.of(Length.metres(2)), selvedge), List.of(weft), shrunk(), 1);
  }

  private static Warp warp(Sett sett, OptionalInt ends, Optional<Length> length, int selvedge) {
    return new Warp(sett, ends, length, 1, selvedge, List.of(new OrderEntry(CHALK, new OrderEntry.Share(BigFraction.ONE), 1)));
  }

  private static Allowances shrunk() {
    Percentage none = Percentage.ZERO;
    return new Allowances(none, none, none, none, Percentage.parse("10 %"), Length.ZERO, Length.ZERO, Length.ZERO, none, 0, Length.ZERO);
  }
}
