package hankbook.gear;

import static org.assertj.core.api.Assertions.assertThat;

import hankbook.measure.Length;
import hankbook.measure.Sett;
import java.util.List;
import java.util.Optional;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.IntRange;
import org.apache.commons.numbers.fraction.BigFraction;

class SleyingProperties {
  @Property
  void wholeRepeatsTakeAllDentsAndTheRealWidthTimesTheRealSettMakesTheEnds(
      @ForAll("reeds") Reed reed, @ForAll("sleys") Sley sley, @ForAll @IntRange(min = 1, max = 500) int repeats) {
    int ends = repeats * sley.endsInRepeat();
    Sleying sleying = new Sleying(reed, sley, ends);
    assertThat(BigFraction.of(sleying.dents()).multiply(sley.perDent())).isEqualTo(BigFraction.of(ends));
    assertThat(sleying.exactWidth().multiply(new SleyChoice(reed.dents(), reed, sley).perTenth())).isEqualTo(BigFraction.of(ends));
    assertThat(sleying.leftOver()).isZero();
  }

  @Property
  void noFewerDentsWouldTakeTheEnds(@ForAll("sleys") Sley sley, @ForAll @IntRange(min = 1, max = 3_000) int ends) {
    int dents = sley.dentsFor(ends);
    assertThat(taken(sley, dents)).isGreaterThanOrEqualTo(ends);
    assertThat(taken(sley, dents - 1)).isLessThan(ends);
  }

  private static int taken(Sley sley, int dents) {
    int ends = 0;
    for (int dent = 0; dent < dents; dent++) {
      ends += sley.ends().get(dent % sley.dents());
    }
    return ends;
  }

  @Property
  void aWarpInTheMiddleLeavesAsManyDentsFreeBeforeAsAfterButForOne(@ForAll("sleys") Sley sley, @ForAll @IntRange(min = 1, max = 400) int ends) {
    Sleying sleying = new Sleying(new Reed("50/10 cm", Sett.parse("50/10 cm"), Optional.of(Length.parse("90 cm"))), sley, ends);
    int before = sleying.freeBefore().orElseThrow();
    int after = sleying.freeAfter().orElseThrow();
    assertThat(before + sleying.dents() + after).isEqualTo(450);
    assertThat(after - before).isBetween(0, 1);
  }

  @Property
  void everyWayOfFewEndsOverFewDentsIsAmongThemOnceAndSpreadEvenly(@ForAll @IntRange(min = 1, max = 5) int dents, @ForAll @IntRange(max = 25) int more) {
    int ends = Math.min(dents + more, dents * 6);
    List<SleyChoice> same =
        SleyChoice.all(Sett.perInch(20), List.of(new Reed("r", Sett.perInch(12), Optional.empty()))).stream()
            .filter(choice -> choice.sley().perDent().equals(BigFraction.of(ends, dents)))
            .toList();
    assertThat(same).hasSize(1);
    Sley sley = Sley.spread(ends, dents);
    assertThat(sley.endsInRepeat()).isEqualTo(ends);
    assertThat(sley.dents()).isEqualTo(dents);
    assertThat(sley.ends()).allMatch(end -> end == ends / dents || end == Math.ceilDiv(ends, dents));
  }

  @Property
  void aSleyingReadsBack(@ForAll("sleys") Sley sley) {
    assertThat(Sley.parse(sley.toString())).isEqualTo(sley);
  }

  @Provide
  Arbitrary<Sley> sleys() {
    return Arbitraries.integers().between(1, 6).list().ofMinSize(1).ofMaxSize(5).map(Sley::new);
  }

  @Provide
  Arbitrary<Reed> reeds() {
    return Arbitraries.of("6/in", "12/in", "15.5/in", "40/10 cm", "50/10 cm", "5/cm").map(dents -> new Reed(dents, Sett.parse(dents), Optional.empty()));
  }
}
