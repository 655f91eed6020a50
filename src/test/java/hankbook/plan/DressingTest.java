package hankbook.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import hankbook.gear.Sley;
import hankbook.gear.Weave;
import hankbook.measure.Length;
import hankbook.measure.Sett;
import hankbook.yarn.YarnColour;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.apache.commons.numbers.fraction.BigFraction;
import org.junit.jupiter.api.Test;

class DressingTest {
  private static final Dressing SAID = new Dressing(Optional.of("Window loom"), Optional.of("12/in"), Optional.of(Weave.PLAIN), Optional.of(Sley.parse("2-2-1")));

  @Test
  void aPlanWithOneThingChangedIsDressedAsItWas() {
    Piece scarf = new Piece("scarf", 2, Length.metres(2), Length.parse("45 cm"), Length.ZERO, Length.ZERO);
    OrderEntry all = new OrderEntry(new YarnColour("Skerry 16/2", "Chalk"), new OrderEntry.Share(BigFraction.ONE), 1);
    Warp warp = new Warp(Sett.perCentimetre(10), OptionalInt.empty(), Optional.empty(), 1, 0, List.of(all));
    Plan plan = new Plan("Scarf", List.of(scarf), warp, List.of(), Optional.empty(), Allowances.NONE, 1, SAID);
    assertThat(PlanVariants.withWarp(plan, 100, Length.metres(3)).dressing()).isEqualTo(SAID);
    assertThat(PlanVariants.withPieces(plan, 0, 1).dressing()).isEqualTo(SAID);
  }

  @Test
  void aLoomOrReedThatIsSaidHasAName() {
    assertThatThrownBy(() -> new Dressing(Optional.of(" "), Optional.empty(), Optional.empty(), Optional.empty()))
        .hasMessage("found nothing, wanted the loom's name, or no loom at all");
    assertThatThrownBy(() -> new Dressing(Optional.empty(), Optional.of(""), Optional.empty(), Optional.empty()))
        .hasMessage("found nothing, wanted the reed's name or its dents, or no reed at all");
  }
}
