package hankbook.yarn;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import hankbook.measure.Length;
import hankbook.measure.Mass;
import hankbook.measure.Percentage;
import hankbook.measure.Unreadable;
import hankbook.measure.YarnNumber;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Labels, turns, weights with their moisture, and weighed samples. */
class MeasurementTest {
  private static final Optional<Length> LABEL = Optional.of(Length.metres(1000));
  private static final Optional<Turns> TURNS = Optional.of(new Turns(450, Length.parse("2 m")));
  private static final Optional<Weighing> WEIGHING = Optional.of(new Weighing(Mass.grams(105), Mass.grams(10)));
  private static final Optional<YarnNumber> TEX_100 = Optional.of(YarnNumber.parse("tex 100"));

  @Test
  void aWeightWithAGristIsUsedBeforeTurnsAndTurnsBeforeALabel() {
    assertThat(length(new Measures(LABEL, TURNS, WEIGHING), TEX_100)).isEqualTo(Length.metres(950));
    assertThat(length(new Measures(LABEL, TURNS, WEIGHING), Optional.empty())).isEqualTo(Length.metres(900));
    assertThat(length(new Measures(LABEL, Optional.empty(), WEIGHING), Optional.empty())).isEqualTo(Length.metres(1000));
  }

  @Test
  void turnsAreDoubtedWhereTheyAreOverATenthFromWhatIsUsedOrWhatIsPrinted() {
    assertThat(skein(new Measures(LABEL, TURNS, Optional.empty())).turnsDisagree()).isFalse();
    assertThat(skein(new Measures(Optional.of(Length.metres(1001)), TURNS, Optional.empty())).turnsDisagree()).isTrue();
    assertThat(skein(new Measures(Optional.empty(), TURNS, WEIGHING)).turnsDisagree()).isFalse();
    Optional<Weighing> lighter = Optional.of(new Weighing(Mass.grams(80), Mass.ZERO));
    assertThat(skein(new Measures(Optional.empty(), TURNS, lighter)).turnsDisagree()).isTrue();
    assertThat(skein(new Measures(LABEL, Optional.empty(), WEIGHING)).turnsDisagree()).isFalse();
  }

  @Test
  void aReelTurnsAtLeastOnceAndIsNoLongerThanAHall() {
    assertThatThrownBy(() -> new Turns(0, Length.parse("2 m"))).isInstanceOf(Unreadable.class);
    assertThatThrownBy(() -> new Turns(1, Length.ZERO)).isInstanceOf(Unreadable.class);
    assertThatThrownBy(() -> new Turns(1, Length.metres(101))).isInstanceOf(Unreadable.class);
  }

  /** Regulation (EU) No 1007/2011, Annex IX: cotton 8.5 %, carded wool 17 %, staple polyamide 6.25 % of the dry mass; silk and flax from memory. */
  @ParameterizedTest
  @CsvSource({"cotton, 108.5 g", "Wool, 117 g", "polyamide, 106.25 g", "silk, 111 g", "linen, 112 g"})
  void aHundredGramsOfDryYarnWeighAtTheirStandardRegainWhatTheRegulationAllows(String fibre, String standard) {
    Weighing dry = new Weighing(Mass.grams(140), Mass.grams(40), Optional.of(Percentage.ZERO));
    Weighing damp = new Weighing(Mass.grams(160), Mass.grams(40), Optional.of(Percentage.parse("20 %")));
    assertThat(dry.netAtStandard(fibre)).isEqualTo(Mass.parse(standard));
    assertThat(damp.netAtStandard(fibre)).isEqualTo(Mass.parse(standard));
    assertThat(new Weighing(Mass.grams(140), Mass.grams(40)).netAtStandard(fibre)).isEqualTo(Mass.grams(100));
  }

  /** The same regulation declares a fibre's part with its allowance in it: of 100 g, half wool and half cotton, 50 / 1.17 and 50 / 1.085 are dry. */
  @Test
  void aBlendHoldsTheWaterOfItsParts() {
    double dry = 50 / 1.17 + 50 / 1.085;
    Percentage blend = Regain.standard("wool 50 cotton 50").orElseThrow();
    assertThat(blend.fraction().doubleValue()).isCloseTo(100 / dry - 1, within(1e-12));
    assertThat(Regain.standard("50 % cotton, 50 % wool")).contains(blend);
    assertThat(Regain.standard("wool 50 cotton 40")).isEmpty();
    assertThat(Regain.standard("wool 50 nettle 50")).isEmpty();
    assertThat(Regain.standard("")).isEmpty();
  }

  @Test
  void moistureOfAFibreThatIsNotKnownIsRefused() {
    Weighing damp = new Weighing(Mass.grams(160), Mass.grams(40), Optional.of(Percentage.parse("20 %")));
    assertThatThrownBy(() -> damp.netAtStandard("nettle")).isInstanceOf(Unreadable.class).hasMessageStartingWith("found 'nettle', wanted a fibre whose standard regain is known (acrylic,");
    assertThatThrownBy(() -> new Weighing(Mass.grams(1), Mass.ZERO, Optional.of(Percentage.parse("101 %")))).isInstanceOf(Unreadable.class);
    assertThatThrownBy(() -> new Weighing(Mass.grams(1), Mass.ZERO, Optional.of(Percentage.parse("10 % of yarn")))).isInstanceOf(Unreadable.class);
  }

  /** J. T. Taylor, Cotton Weaving and Designing, 6th ed.: 120 yd of cotton yarn weighing 20 grains is 50's; 7000 grains are a pound. */
  @Test
  void aWeighedSampleGivesTheGrist() {
    Mass twentyGrains = new Mass(Math.round(453_592.37 * 20 / 7000));
    GristSample sample = new GristSample(Length.parse("120 yd"), twentyGrains, new Mass(1), Length.ZERO);
    assertThat(sample.grist().tex().doubleValue()).isCloseTo(YarnNumber.parse("50 cotton").grist().tex().doubleValue(), within(0.005));
  }

  /** JCGM 100:2008: the root of the sum of squares; a rectangular half-width is divided by √3, and half a division is one. */
  @Test
  void aSampleIsAsSureAsItsBalanceAndItsRule() {
    GristSample sample = new GristSample(Length.metres(10), new Mass(630), new Mass(10), Length.parse("5 cm"));
    double twoReadings = Math.sqrt(2) * (5 / Math.sqrt(3)) / 630;
    assertThat(sample.uncertainty().fraction().doubleValue()).isCloseTo(Math.hypot(twoReadings, 0.005 / Math.sqrt(3)), within(1e-9));
    assertThat(GristSample.usuallyWithin(Length.metres(10))).isEqualTo(Length.parse("5 cm"));
    assertThat(Mass.lastDigit("0.63 g")).isEqualTo(new Mass(10));
    assertThat(Mass.lastDigit("63 g")).isEqualTo(Mass.grams(1));
    assertThatThrownBy(() -> Mass.lastDigit("0.63001 g")).isInstanceOf(Unreadable.class);
  }

  @Test
  void aSampleThatTellsNothingIsRefused() {
    Length ten = Length.metres(10);
    assertThatThrownBy(() -> new GristSample(ten, new Mass(630), Mass.grams(1), Length.ZERO))
        .hasMessage("found '0.63 g on a balance of 1 g', wanted a longer sample or a finer balance: the grist would be known to 65 % only");
    assertThatThrownBy(() -> new GristSample(Length.ZERO, new Mass(630), new Mass(10), Length.ZERO)).isInstanceOf(Unreadable.class);
    assertThatThrownBy(() -> new GristSample(ten, Mass.ZERO, new Mass(10), Length.ZERO)).isInstanceOf(Unreadable.class);
    assertThatThrownBy(() -> new GristSample(ten, new Mass(630), Mass.ZERO, Length.ZERO)).isInstanceOf(Unreadable.class);
    assertThatThrownBy(() -> new GristSample(ten, new Mass(630), new Mass(10), ten)).isInstanceOf(Unreadable.class);
  }

  private static Length length(Measures measures, Optional<YarnNumber> grist) {
    return measures.measurement(grist, Optional.empty(), "wool").length().orElseThrow();
  }

  private static Skein skein(Measures measures) {
    return Skeins.of("1", "A", measures);
  }
}
