package hankbook.reckon;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.stream.IntStream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Size;
import org.apache.commons.numbers.fraction.BigFraction;
import org.apache.commons.statistics.distribution.TDistribution;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class FindingTest {
  /**
   * Worked by hand: 7.1, 6.8, 8.2, 7.4, 7.5 sum to 37, mean 7.4; the squares of 0.3, 0.6, 0.8, 0, 0.1 sum to 1.1, so s = √(1.1/4) = 0.5244; t(4, 0.975) = 2.7764 by
   * SciPy 1.17.1, times s × √1.2 = 0.57446 is 1.59495.
   */
  @Test
  void fiveTakeUpsGiveMeanSpreadAndInterval() {
    Finding finding = finding("7.1", "6.8", "8.2", "7.4", "7.5");
    assertThat(finding.count()).isEqualTo(5);
    assertThat(finding.mean()).isEqualTo(BigFraction.of(74, 1000));
    assertThat(finding.spread().orElseThrow().doubleValue()).isCloseTo(Math.sqrt(1.1 / 4) / 100, within(1e-12));
    assertThat(finding.uncertainty().orElseThrow().doubleValue()).isCloseTo(Math.sqrt(1.1 / 4 * 1.2) / 100, within(1e-12));
    assertThat(finding.interval().orElseThrow().low().doubleValue()).isCloseTo(0.0580505371585, within(1e-12));
    assertThat(finding.interval().orElseThrow().high().doubleValue()).isCloseTo(0.0899494628415, within(1e-12));
    assertThat(finding.range()).isEqualTo("5.8 to 9 %");
    assertThat(finding.odd()).isEmpty();
  }

  /** Two values d apart: s = d/√2, and t(1, 0.975) = tan(0.475 π) in closed form; the reach is that times d/√2 × √1.5. */
  @Test
  void twoPlansAreTheFewestForAnInterval() {
    Finding finding = finding("40", "42");
    double reach = Math.tan(0.475 * Math.PI) * 0.02 / Math.sqrt(2) * Math.sqrt(1.5);
    assertThat(finding.interval().orElseThrow().high().doubleValue()).isCloseTo(0.41 + reach, within(1e-9));
    assertThat(finding("40").spread()).isEmpty();
    assertThat(finding("40").interval()).isEmpty();
    assertThat(finding("40").uncertainty()).isEmpty();
    assertThat(finding("40").range()).isEmpty();
  }

  /** Student's t of SciPy 1.17.1, {@code scipy.stats.t.ppf(0.975, df)}. */
  @ParameterizedTest
  @CsvSource({
    "1, 12.706204736174694", "2, 4.302652729749462", "3, 3.1824463052837078", "4, 2.7764451051977934", "9, 2.262157162798205", "29, 2.045229642132703", "200, 1.9718962236339088"
  })
  void theLibrarysQuantilesAreThoseOfAnotherLibrary(int freedom, double quantile) {
    assertThat(TDistribution.of(freedom).inverseCumulativeProbability(0.975)).isCloseTo(quantile, within(1e-8));
  }

  /** t of 1 and of 2 degrees of freedom have quantiles in closed form: tan(π(p − ½)) and (2p − 1)/√(2p(1 − p)). */
  @ParameterizedTest
  @CsvSource({"0.6", "0.9", "0.975", "0.99", "0.9975"})
  void theLibrarysQuantilesAreThoseOfTheClosedForms(double probability) {
    double one = Math.tan(Math.PI * (probability - 0.5));
    double two = (2 * probability - 1) / Math.sqrt(2 * probability * (1 - probability));
    assertThat(TDistribution.of(1).inverseCumulativeProbability(probability)).isCloseTo(one, within(1e-9 * one));
    assertThat(TDistribution.of(2).inverseCumulativeProbability(probability)).isCloseTo(two, within(1e-9 * two));
  }

  /** From {@code scipy.stats.t.ppf(1 - 0.05 / (2 * n), n - 2)} of SciPy 1.17.1, put into the formula. */
  @ParameterizedTest
  @CsvSource({"3, 1.1543048513440386", "4, 1.48125", "5, 1.7150373123433635", "8, 2.1266450871954667", "10, 2.2899540844796036", "20, 2.7082456458057584", "100, 3.3840829011549176"})
  void grubbsGoesByTheQuantilesOfStudentsT(int count, double critical) {
    assertThat(Grubbs.critical(count)).isCloseTo(critical, within(1e-9));
  }

  /** With the closed forms of t put in, the test of three goes by 2/√3 × cos(π × 0.05/6) and that of four by 3/2 × (1 − 0.05/4). */
  @Test
  void grubbsOfThreeAndFourGoesByWhatTheClosedFormsMake() {
    assertThat(Grubbs.critical(3)).isCloseTo(2 / Math.sqrt(3) * Math.cos(Math.PI * 0.05 / 6), within(1e-9));
    assertThat(Grubbs.critical(4)).isCloseTo(1.5 * (1 - 0.05 / 4), within(1e-9));
  }

  /** By hand: mean 51.2/6 = 8.533, s = √(39.633/5) = 2.815, so 14.2 is 2.013 of them away, over 1.887. Of the other five 8.2 is 1.526 away, under 1.715. */
  @Test
  void anOddWarpIsNamedAndNotDropped() {
    Finding finding = finding("7.1", "6.8", "8.2", "7.4", "7.5", "14.2");
    assertThat(finding.odd()).extracting(Lesson::plan).containsExactly("f");
    assertThat(finding.count()).isEqualTo(6);
    assertThat(finding.mean().doubleValue()).isCloseTo(0.512 / 6, within(1e-12));
  }

  @Test
  void oneOddWarpDoesNotHideAnother() {
    assertThat(finding("7.1", "6.8", "8.2", "7.4", "7.5", "7.2", "7", "7.3", "14.2", "30").odd()).extracting(Lesson::plan).containsExactly("i", "j");
  }

  /** Of two equal values and another the greatest distance is always 2/√3 = 1.1547, over 1.1543: what a tape does not tell apart is never odd. */
  @Test
  void whatATapeHardlyTellsApartIsNotOdd() {
    assertThat(new Finding(Learnable.LOOM_WASTE, Manner.ANY, Cloths.waste(Manner.ANY, "70 cm", "70 cm", "72 cm")).odd()).isEmpty();
    assertThat(new Finding(Learnable.LOOM_WASTE, Manner.ANY, Cloths.waste(Manner.ANY, "70 cm", "70 cm", "90 cm")).odd()).extracting(Lesson::plan).containsExactly("c");
    assertThat(finding("7", "7", "8").odd()).isEmpty();
  }

  @Test
  void aRangeIsToldAsFarAsItCanBe() {
    assertThat(finding("1", "2", "1").range()).isEqualTo("up to 4.2 %");
    assertThat(new Finding(Learnable.DRAW_IN, Manner.ANY, Cloths.percent(Learnable.DRAW_IN, Manner.ANY, "40", "50")).range()).isEqualTo("up to 99 %");
    assertThat(finding("7", "7", "7").range()).isEqualTo("always the same");
    assertThat(new Finding(Learnable.LOOM_WASTE, Manner.ANY, Cloths.waste(Manner.ANY, "70 cm", "68 cm", "71 cm")).range()).isEqualTo("62.1 to 77.3 cm");
  }

  @Property(tries = 200)
  void aShiftMovesTheMeanAndLeavesTheSpread(@ForAll @Size(min = 2, max = 12) List<@IntRange(max = 3000) Integer> values, @ForAll @IntRange(max = 2000) int shift) {
    Finding was = of(values);
    Finding is = of(values.stream().map(value -> value + shift).toList());
    assertThat(is.mean()).isEqualTo(was.mean().add(BigFraction.of(shift, 10_000)));
    assertThat(is.spread().orElseThrow().doubleValue()).isCloseTo(was.spread().orElseThrow().doubleValue(), within(1e-9));
    assertThat(is.odd()).extracting(Lesson::plan).isEqualTo(was.odd().stream().map(Lesson::plan).toList());
    double middle = is.interval().orElseThrow().low().add(is.interval().orElseThrow().high()).divide(2).doubleValue();
    assertThat(middle).isCloseTo(is.mean().doubleValue(), within(1e-9));
  }

  private static Finding of(List<Integer> values) {
    return new Finding(
        Learnable.WARP_TAKE_UP, Manner.ANY,
        IntStream.range(0, values.size()).mapToObj(i -> Cloths.lesson(Learnable.WARP_TAKE_UP, Manner.ANY, i, BigFraction.of(values.get(i), 10_000))).toList());
  }

  private static Finding finding(String... percentages) {
    return new Finding(Learnable.WARP_TAKE_UP, Manner.ANY, Cloths.percent(Learnable.WARP_TAKE_UP, Manner.ANY, percentages));
  }
}
