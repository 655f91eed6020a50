package hankbook.measure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class QuantityTest {
  @ParameterizedTest
  @CsvSource({
    "70 cm, 7000", "1 yd, 9144", "1 in, 254", "3 ft, 9144", "2 x 70 cm + 5 cm, 14500", "(1.5 m + 20 cm) / 2, 8500", "2x3cm, 600", "0, 0",
    "1.5 m - 20 cm, 13000", "100 mm * 2, 2000"
  })
  void aLengthIsReadToTheTenthOfAMillimetre(String text, long tenths) {
    assertThat(Length.parse(text)).isEqualTo(new Length(tenths));
  }

  @ParameterizedTest
  @ValueSource(strings = {"", "5", "5 km", "1,5 m", "5 cm x 5 cm", "5 cm + 5", "5 cm - 6 cm", "1/0 cm", "(5 cm", "5 cm)", "five cm", "1e3 m", "5 cm 5 cm"})
  void whatIsNoLengthIsRefused(String text) {
    assertThatThrownBy(() -> Length.parse(text)).isInstanceOf(Unreadable.class).hasMessageContaining("wanted a length such as 70 cm");
  }

  /** Common practice: two repeats of 42 units with 15 and 16 more, six ends to the unit. */
  @Test
  void endsMayBeWrittenAsArithmetic() {
    assertThat(Arithmetic.count("2 x 42 + 15 + 16")).isEqualTo(115);
    assertThat(Arithmetic.count("(2 x 42 + 15 + 16) x 6")).isEqualTo(690);
    assertThat(Arithmetic.count("(3 x 36 + 12 + 9) x 4")).isEqualTo(516);
    assertThatThrownBy(() -> Arithmetic.count("7 / 2")).hasMessageContaining("found '7 / 2', wanted a whole number");
  }

  /** ISO 7211-3: an 8 m cloth whose warp straightens to 8.6 m has 7.5 % crimp and 6.98 % contraction. */
  @Test
  void crimpAndContractionAreTwoPercentagesOfTheSameThing() {
    assertThat(Percentage.parse("7.5 %").yarnPerCloth().multiply(8).doubleValue()).isEqualTo(8.6);
    assertThat(Percentage.parse("7.5 % of cloth").yarnPerCloth()).isEqualTo(Percentage.parse("7.5 %").yarnPerCloth());
    assertThat(Percentage.parse("6.976744186 % of yarn").yarnPerCloth().multiply(8).doubleValue()).isCloseTo(8.6, within(1e-8));
  }

  @ParameterizedTest
  @ValueSource(strings = {"8", "8 percent", "-1 %", "8 % of wool", "100 % of yarn", "8,5 %"})
  void whatIsNoPercentageIsRefused(String text) {
    assertThatThrownBy(() -> Percentage.parse(text)).isInstanceOf(Unreadable.class);
  }

  /** Common practice: 690 ends at 40 to the inch lie 17.25 in wide; re-sleyed at 36 about 19 in. */
  @Test
  void aSettGivesTheWidthOfItsEnds() {
    assertThat(Sett.parse("40/in").widthOf(690).doubleValue()).isEqualTo(17.25 * 254);
    assertThat(Sett.parse("36/in").widthOf(690).doubleValue() / 254).isCloseTo(19, within(0.2));
    assertThat(Sett.parse("100/10 cm")).isEqualByComparingTo(Sett.parse("10/cm"));
    assertThatThrownBy(() -> Sett.parse("0/cm")).isInstanceOf(Unreadable.class);
  }

  @Test
  void aMassIsReadInMilligrams() {
    assertThat(Mass.parse("100 g")).isEqualTo(Mass.grams(100));
    assertThat(Mass.parse("1 lb")).isEqualTo(new Mass(453_592));
    assertThatThrownBy(() -> Mass.parse("100")).hasMessage("found '100', wanted a mass such as 100 g (mg, g, kg, oz or lb)");
  }
}
