package hankbook.yarn;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hankbook.measure.Length;
import hankbook.measure.Mass;
import hankbook.measure.Percentage;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class UncertaintyTest {
  private static final Optional<GristSample> SAMPLE = Optional.of(new GristSample(Length.metres(20), new Mass(2000), new Mass(10), Length.parse("10 cm")));
  private static final double BALANCE = Math.sqrt(2) / Math.sqrt(12) * 10;

  /** Council Directive 76/211/EEC, Annex I 2.4, tolerable negative error in grams, of a nominal mass in grams; 100 tex, so a gram is 10 m. */
  @ParameterizedTest
  @CsvSource({"5, 0.45", "50, 4.5", "75, 4.5", "100, 4.5", "150, 6.75", "200, 9", "250, 9", "300, 9", "400, 12", "500, 15", "750, 15", "1000, 15", "2000, 30", "10000, 150"})
  void aLabelMayBeWrongByWhatTheDirectiveTolerates(long grams, double tolerated) {
    assertThat(metres(Skeins.labelled("1", grams))).isCloseTo(tolerated * 10 / Math.sqrt(3), within(0.0001));
  }

  /** The 1 % is common practice. */
  @Test
  void turnsAreKnownToOnePerCent() {
    assertThat(metres(Skeins.counted("1", 500))).isCloseTo(10, within(0.0001));
    assertThat(metres(Skeins.counted("1", 500), Skeins.counted("2", 500))).isCloseTo(10 * Math.sqrt(2), within(0.0001));
  }

  /** JCGM 100:2008: an error that several have in common adds linearly, also over lots where one sample gave the grist of all. */
  @Test
  void oneSampleIsSharedByAllLotsAndAYarnNumberByOne() {
    Skein one = Skeins.weighed("1", "A");
    Skein other = Skeins.weighed("2", "B");
    double sample = SAMPLE.orElseThrow().uncertainty().fraction().doubleValue();
    assertThat(metres(one, other)).isCloseTo(Math.hypot(Math.sqrt(2) * 20, Math.sqrt(2) * BALANCE), within(0.001));
    assertThat(metres(one.withSample(SAMPLE), other.withSample(SAMPLE))).isCloseTo(Math.hypot(2000 * sample, Math.sqrt(2) * BALANCE), within(0.001));
  }

  /** 1000 m by weight before and 400 m after: both by the same grist, so its 2 % are of the 600 m between them; the balance was read four times. */
  @Test
  void theGristErrsTheSameWayBeforeAndAfter() {
    Skein before = Skeins.weighed("1", "A");
    Measures again = new Measures(Optional.empty(), Optional.empty(), Optional.of(new Weighing(Mass.grams(50), Mass.grams(10))));
    Skein after = before.withKept(new Kept(Length.metres(400), Optional.empty(), Optional.of(again)), true);
    double taken = Uncertainty.ofDifference(List.of(before), List.of(after), Doubts.DEFAULT).metres().doubleValue();
    assertThat(taken).isCloseTo(Math.hypot(600 * 0.02, Math.sqrt(2) * BALANCE), within(0.001));
    Skein usedUp = before.withKept(new Kept(Length.ZERO, Optional.empty(), Optional.of(again)), true);
    assertThat(Uncertainty.ofDifference(List.of(before), List.of(usedUp), Doubts.DEFAULT)).isEqualTo(Uncertainty.of(List.of(before), Doubts.DEFAULT).combined());
  }

  @Test
  void everyDefaultCanBeChanged() {
    Doubts doubts = new Doubts(Percentage.parse("6 %"), Mass.parse("0.1 g"), Percentage.ZERO, Percentage.parse("2 %"));
    assertThat(metres(doubts, Skeins.counted("1", 500))).isCloseTo(20, within(0.0001));
    assertThat(metres(doubts, Skeins.weighed("1", "A"))).isCloseTo(BALANCE / 10, within(0.0001));
    Skein bare = Skeins.of("1", "A", new Measures(Optional.empty(), Optional.empty(), Optional.empty())).withLeft(Length.metres(100), false);
    assertThat(metres(doubts, bare)).isCloseTo(6, within(0.0001));
  }

  @Test
  void theSquaresOfThePartsSumToTheSquareOfTheWhole() {
    List<Skein> skeins =
        Stream.of(Skeins.labelled("1", 100), Skeins.labelled("2", 150), Skeins.counted("3", 400), Skeins.weighed("4", "A"), Skeins.weighed("5", "A"), Skeins.weighed("6", "")).toList();
    Uncertainty uncertainty = Uncertainty.of(skeins, Doubts.DEFAULT);
    assertThat(uncertainty.parts()).extracting(Uncertainty.Part::words)
        .containsExactly("labels, 2 skeins", "grist of Fjara Ash, lot A, 2 skeins", "grist of Fjara Ash, skein 6, 1 skein", "turns, 1 skein", "balance, 3 skeins");
    double squares = uncertainty.parts().stream().mapToDouble(part -> Math.pow(part.error().metres().doubleValue(), 2)).sum();
    assertThat(Math.sqrt(squares)).isCloseTo(uncertainty.combined().metres().doubleValue(), within(0.0002));
  }

  /** The sample says 100 tex exactly, so a skein that the ledger took for 950 m is 50 m out until it is recounted. */
  @Test
  void metresThatTheWeighedGristContradictsAreDoubtedUntilTheyAreRecounted() {
    Skein skein = Skeins.weighed("1", "A").withSample(SAMPLE);
    Skein kept = skein.withKept(new Kept(Length.metres(950), Optional.of(Length.metres(950)), Optional.empty()), false);
    Skein recounted = skein.withKept(new Kept(Length.metres(1000), Optional.of(Length.metres(1000)), Optional.empty()), false);
    assertThat(kept.gristDisagrees()).isTrue();
    assertThat(kept.holds()).isEqualTo(Length.metres(950));
    assertThat(metres(kept)).isCloseTo(Math.hypot(50, metres(skein)), within(0.001));
    assertThat(recounted.gristDisagrees()).isFalse();
    assertThat(metres(recounted)).isEqualTo(metres(skein));
  }

  /** Whole, it was known to 2 % and its balance; the remnant was weighed by itself. */
  @Test
  void aRemnantThatWasWeighedAgainIsAsSureAsThatWeighing() {
    Skein whole = Skeins.weighed("1", "A");
    Weighing remnant = new Weighing(Mass.grams(20), Mass.grams(10));
    Measures again = new Measures(Optional.empty(), Optional.empty(), Optional.of(remnant));
    Skein now = whole.withKept(new Kept(Length.metres(100), Optional.of(Length.metres(100)), Optional.of(again)), true);
    assertThat(metres(whole.withLeft(Length.metres(100), true))).isEqualTo(metres(whole));
    assertThat(metres(now)).isCloseTo(Math.hypot(2, BALANCE), within(0.001));
  }

  private static double metres(Skein... skeins) {
    return metres(Doubts.DEFAULT, skeins);
  }

  private static double metres(Doubts doubts, Skein... skeins) {
    return Uncertainty.of(List.of(skeins), doubts).combined().metres().doubleValue();
  }
}
