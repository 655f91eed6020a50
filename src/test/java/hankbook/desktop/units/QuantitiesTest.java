package hankbook.desktop.units;

import static org.assertj.core.api.Assertions.assertThat;

import hankbook.measure.Length;
import hankbook.measure.Mass;
import hankbook.measure.NumberingSystem;
import hankbook.measure.Sett;
import hankbook.measure.YarnNumber;
import hankbook.yarn.FibreFamily;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** How quantities are written for whom. Where a converted number is expected it follows from 1 yd = 0.9144 m, 1 in = 2.54 cm and 1 lb = 453.59237 g (1959 agreement). */
class QuantitiesTest {
  private static final Quantities METRIC = new Quantities(Units.METRIC, '.');
  private static final Quantities COMMA = new Quantities(Units.METRIC, ',');
  private static final Quantities IMPERIAL = new Quantities(Units.IMPERIAL, '.');

  @ParameterizedTest
  @CsvSource({"1354.6895 m, '1 354.7 m', '1 354,7 m', '1 481.5 yd'", "4 cm, 0.0 m, '0,0 m', 0.0 yd", "0 m, 0.0 m, '0,0 m', 0.0 yd"})
  void yarnIsSaidToATenth(String length, String metric, String comma, String imperial) {
    assertThat(METRIC.yarn(Length.parse(length))).isEqualTo(thin(metric));
    assertThat(COMMA.yarn(Length.parse(length))).isEqualTo(thin(comma));
    assertThat(IMPERIAL.yarn(Length.parse(length))).isEqualTo(thin(imperial));
  }

  @ParameterizedTest
  @CsvSource({"70 cm, 70 cm, '70 cm', 27.6 in", "48.26 cm, 48.3 cm, '48,3 cm', 19 in", "3 m, 300 cm, '300 cm', '3.28 yd'", "6.43 m, 6.43 m, '6,43 m', 7.03 yd"})
  void clothIsSaidInTheSmallerUnitForAsLongAsItIsShort(String length, String metric, String comma, String imperial) {
    assertThat(METRIC.cloth(Length.parse(length))).isEqualTo(metric);
    assertThat(COMMA.cloth(Length.parse(length))).isEqualTo(comma);
    assertThat(IMPERIAL.cloth(Length.parse(length))).isEqualTo(imperial);
  }

  @ParameterizedTest
  @CsvSource({"240 g, 240 g, 8.5 oz", "0.63 g, 0.63 g, 0.02 oz", "1234.5 g, '1 235 g', 2.72 lb", "2 lb, 907 g, 32.0 oz"})
  void aMassIsSaidAsSurelyAsItIsWeighed(String mass, String metric, String imperial) {
    assertThat(METRIC.mass(Mass.parse(mass))).isEqualTo(thin(metric));
    assertThat(IMPERIAL.mass(Mass.parse(mass))).isEqualTo(imperial);
  }

  @Test
  void aSettStaysAsItWasEnteredWhereThatIsTheUsersUnit() {
    assertThat(IMPERIAL.sett(Sett.parse("24/in"))).isEqualTo("24/in");
    assertThat(METRIC.sett(Sett.parse("24/in"))).isEqualTo("9.45/cm");
    assertThat(COMMA.sett(Sett.parse("24/in"))).isEqualTo("9,45/cm");
    assertThat(IMPERIAL.sett(Sett.parse("10/cm"))).isEqualTo("25.4/in");
    assertThat(new Quantities(Units.METRIC.withSett(SettUnit.PER_TEN_CENTIMETRES), ',').sett(Sett.parse("24/in"))).isEqualTo("94,5/10 cm");
  }

  @ParameterizedTest
  @CsvSource({"8/1 cotton, cotton, 8 cotton", "2/16 worsted, wool merino, 8 worsted", "16/1 lea, linen, 16 lea", "20 spun silk, silk, 20 spun silk", "1680 yd/lb, wool 50 silk 50, 1680 yd/lb"})
  void aGristIsSaidByTheNumberOfItsFibre(String number, String fibre, String said) {
    assertThat(IMPERIAL.grist(YarnNumber.parse(number).grist(), fibre)).isEqualTo(said);
  }

  @Test
  void aGristIsSaidInTexOrInTheNumberThatWasChosen() {
    assertThat(COMMA.grist(YarnNumber.parse("62.5 tex").grist(), "cotton")).isEqualTo("62,5 tex");
    Units byMetricNumber = Units.METRIC.withNumbers(YarnNumbers.TEX.with(FibreFamily.WOOL, NumberingSystem.METRIC));
    assertThat(new Quantities(byMetricNumber, ',').grist(YarnNumber.parse("62.5 tex").grist(), "wool")).isEqualTo("Nm 16");
  }

  @ParameterizedTest
  @CsvSource({
    "70 cm, 70 cm, 28 in", "48 cm, 48 cm, 19 in", "950 m, 950 m, 1000 yd", "10/cm, 10/cm, 25/in", "0 cm, 0 cm, 0 in", "240 g, 240 g, 8.5 oz", "24.50 EUR, '24,50 EUR', 24.50 EUR",
    "from width, from width, from width", "Nm 20/2, Nm 20/2, Nm 20/2", "8.5 %, '8,5 %', 8.5 %"
  })
  void anExampleIsARoundNumberOfTheUsersUnit(String example, String comma, String imperial) {
    assertThat(COMMA.example(example)).isEqualTo(comma);
    assertThat(IMPERIAL.example(example)).isEqualTo(imperial);
  }

  @Test
  void onlyTheUnitedStatesBeginImperial() {
    assertThat(Units.of(Locale.US)).isEqualTo(Units.IMPERIAL);
    assertThat(Units.of(Locale.UK)).isEqualTo(Units.METRIC);
    assertThat(Units.of(Locale.GERMANY)).isEqualTo(Units.METRIC);
  }

  private static String thin(String text) {
    return text.replaceAll("(?<=\\d) (?=\\d)", "\u202F");
  }
}
