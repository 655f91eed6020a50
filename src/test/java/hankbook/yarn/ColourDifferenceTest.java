package hankbook.yarn;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import hankbook.measure.Unreadable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;

class ColourDifferenceTest {
  /** All 34 pairs of G. Sharma, W. Wu, E. N. Dalal, Color Research and Application 30(1), 2005, Table 1, to its four places. */
  @ParameterizedTest
  @CsvFileSource(resources = "/reference/ciede2000.csv", numLinesToSkip = 2)
  void thePublishedPairsDifferAsPublished(int pair, double l1, double a1, double b1, double l2, double a2, double b2, double published) {
    Colour one = new Colour(l1, a1, b1);
    Colour other = new Colour(l2, a2, b2);
    assertThat(one.differenceTo(other).deltaE()).as("pair " + pair).isCloseTo(published, within(0.000_05));
    assertThat(other.differenceTo(one).deltaE()).as("pair " + pair + " the other way round").isCloseTo(published, within(0.000_05));
  }

  /** IEC 61966-2-1 puts sRGB's white at D65, L* = 100; its primaries in CIELAB are values from memory. */
  @ParameterizedTest
  @CsvSource({"#ffffff, 100, 0, 0", "#000000, 0, 0, 0", "#ff0000, 53.24, 80.09, 67.20", "#00ff00, 87.73, -86.18, 83.18", "#0000ff, 32.30, 79.19, -107.86"})
  void aScreenColourHasItsPlaceInTheLab(String hex, double lightness, double redGreen, double yellowBlue) {
    Colour colour = Colour.ofHex(hex);
    assertThat(colour.lightness()).isCloseTo(lightness, within(0.03));
    assertThat(colour.redGreen()).isCloseTo(redGreen, within(0.03));
    assertThat(colour.yellowBlue()).isCloseTo(yellowBlue, within(0.03));
  }

  @Test
  void blackIsAHundredFromWhiteAndAColourNothingFromItself() {
    assertThat(Colour.ofHex("#000000").differenceTo(Colour.ofHex("#ffffff")).deltaE()).isCloseTo(100, within(0.001));
    assertThat(Colour.ofHex("#2f5d8a").differenceTo(Colour.ofHex("#2f5d8a")).deltaE()).isZero();
  }

  @Test
  void whatIsNoColourIsRefused() {
    assertThatThrownBy(() -> Colour.ofHex("woad")).isInstanceOf(Unreadable.class).hasMessage("found 'woad', wanted a colour such as #2f5d8a");
  }
}
