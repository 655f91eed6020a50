package hankbook.allot;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hankbook.measure.Length;
import hankbook.measure.Mass;
import hankbook.measure.YarnNumber;
import hankbook.yarn.Doubts;
import hankbook.yarn.PackageForm;
import hankbook.yarn.Skein;
import hankbook.yarn.Uncertainty;
import hankbook.yarn.Weighing;
import hankbook.yarn.YarnColour;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

class CoverTest {
  private static final YarnColour YARN = new YarnColour("Fjara", "Ash");

  /** The 95th percentile of the normal distribution lies at 1.644854 (standard table). */
  @Test
  void aYarnIsTightWhereTheRiskIsOverOneInTwenty() {
    Length uncertainty = Length.metres(100);
    assertThat(new Cover(YARN, Length.metres(1000), Length.parse("1164.4854 m"), uncertainty, true).risk()).isCloseTo(0.05, within(1e-6));
    assertThat(new Cover(YARN, Length.metres(1000), Length.metres(1165), uncertainty, true).verdict()).isEqualTo(Verdict.COVERED);
    assertThat(new Cover(YARN, Length.metres(1000), Length.metres(1164), uncertainty, true).verdict()).isEqualTo(Verdict.TIGHT);
    assertThat(new Cover(YARN, Length.metres(1000), Length.metres(999), uncertainty, true).verdict()).isEqualTo(Verdict.SHORT);
    assertThat(new Cover(YARN, Length.metres(1000), Length.metres(2000), uncertainty, false).verdict()).isEqualTo(Verdict.SHORT);
  }

  /** JCGM 100:2008: a shared error adds linearly; two lots add as squares. The 2 % of the grist is common practice. */
  @Test
  void skeinsOfOneLotShareTheErrorOfTheirGrist() {
    double shared = uncertainty(weighed("1", "A"), weighed("2", "A")).tenthsOfMillimetre();
    double apart = uncertainty(weighed("1", "A"), weighed("2", "B")).tenthsOfMillimetre();
    double own = Math.sqrt(2) * Math.sqrt(2) * 10_000 * 10 / Math.sqrt(12);
    assertThat(shared).isCloseTo(Math.hypot(2 * 0.02 * 10_000_000, own), within(1.0));
    assertThat(apart).isCloseTo(Math.hypot(Math.sqrt(2) * 0.02 * 10_000_000, own), within(1.0));
  }

  /** Council Directive 76/211/EEC, Annex I 2.4: 100 to 200 g, 4.5 %; as a rectangular half-width. */
  @Test
  void aLabelIsAsUncertainAsTheDirectiveTolerates() {
    Skein skein = skein("1", "A", Optional.of(Length.metres(1500)), Optional.empty());
    assertThat(uncertainty(skein).tenthsOfMillimetre()).isEqualTo(Math.round(15_000_000 * 0.045 / Math.sqrt(3)));
  }

  @Test
  void whatIsLeftOfASkeinKeepsTheErrorOfItsMeasurement() {
    Skein whole = weighed("1", "A");
    assertThat(uncertainty(whole.withLeft(Length.metres(10), true))).isEqualTo(uncertainty(whole));
    assertThat(uncertainty(whole.withLeft(Length.ZERO, true))).isEqualTo(Length.ZERO);
  }

  /** Common practice: three skeins of 950 m hold 690 ends of 4 m. */
  @Test
  void threeSkeinsHoldTheirWarp() {
    List<Candidate> skeins = Stream.of("1", "2", "3").map(code -> candidate(code, "A", 950)).toList();
    Allotment allotment = Allotting.best(skeins, new Demand(690, Length.metres(4), Length.ZERO, Length.metres(5)));
    assertThat(allotment.complete()).isTrue();
    assertThat(allotment.shares().stream().mapToInt(Share::ends).sum()).isEqualTo(690);
  }

  @Test
  void metresInPiecesAreNotWholeEnds() {
    List<Candidate> skeins = Stream.of("1", "2", "3", "4").map(code -> candidate(code, "A", 7)).toList();
    assertThat(Allotting.best(skeins, new Demand(5, Length.metres(4), Length.ZERO, Length.metres(5))).endsUncovered()).isEqualTo(1);
  }

  @Test
  void oneLotThatHoldsTheWarpIsTakenBeforeTwo() {
    List<Candidate> skeins = List.of(candidate("1", "A", 60), candidate("2", "B", 50), candidate("3", "B", 50));
    Allotment allotment = Allotting.best(skeins, new Demand(20, Length.metres(5), Length.ZERO, Length.metres(5)));
    assertThat(allotment.shares()).extracting(Share::code).containsExactly("2", "3");
  }

  private static Length uncertainty(Skein... skeins) {
    return Uncertainty.of(List.of(skeins), Doubts.DEFAULT).combined();
  }

  private static Candidate candidate(String code, String lot, int metres) {
    return new Candidate(code, lot, false, Length.metres(metres), LocalDate.of(2025, 1, 1));
  }

  private static Skein weighed(String code, String lot) {
    return skein(code, lot, Optional.empty(), Optional.of(new Weighing(Mass.grams(110), Mass.grams(10))));
  }

  private static Skein skein(String code, String lot, Optional<Length> label, Optional<Weighing> weighing) {
    Optional<YarnNumber> grist = Optional.of(YarnNumber.parse("tex 100"));
    return new Skein(
        code, YARN, "", "wool", grist, PackageForm.CONE, label, weighing, false, lot, "", Optional.empty(), Optional.empty(), Optional.empty());
  }
}
