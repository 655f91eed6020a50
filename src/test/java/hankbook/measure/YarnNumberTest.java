package hankbook.measure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.math.RoundingMode;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class YarnNumberTest {
  /** The table was computed with GNU Units 2.22; its definitions agree with ASTM D2260-03(2013), Table 1. */
  @ParameterizedTest
  @CsvFileSource(resources = "/reference/yarn-numbers.csv", numLinesToSkip = 2)
  void everyNumberOfTheUnitsTableHasItsTex(String system, String number, double tex, double yardsPerPound, double metresPerKilogram) {
    String symbol =
        switch (system) {
          case "cotton count" -> "cotton";
          case "worsted count" -> "worsted";
          case "linen lea" -> "lea";
          case "woollen run" -> "run";
          case "woollen cut" -> "cut";
          case "denier" -> "den";
          case "metric count" -> "Nm";
          default -> system;
        };
    boolean first = symbol.equals("Nm") || symbol.equals("tex");
    Grist grist = YarnNumber.parse(first ? symbol + " " + number : number + " " + symbol).grist();
    assertThat(grist.tex().doubleValue()).isCloseTo(tex, within(tex * 1e-8));
    assertThat(496054.6479 / grist.tex().doubleValue()).isCloseTo(yardsPerPound, within(yardsPerPound * 1e-8));
    assertThat(1e6 / grist.tex().doubleValue()).isCloseTo(metresPerKilogram, within(metresPerKilogram * 1e-8));
  }

  /** J. T. Taylor, Cotton Weaving and Designing, 6th ed. 1909, calculations: 2/40's cotton runs 20 hanks to the lb, 40's/2 spun silk 40. */
  @ParameterizedTest
  @CsvSource({"2/40 cotton, 20 cotton", "40/2 cotton, 20 cotton", "40/2 spun silk, 40 cotton", "2/16 worsted, 8 worsted", "40/2 lea, 20 lea"})
  void aFoldDividesTheNumberSaveInSpunSilk(String folded, String single) {
    assertThat(YarnNumber.parse(folded).grist()).isEqualTo(YarnNumber.parse(single).grist());
  }

  /** ASTM D2260-03(2013): cotton 10 is worsted 15, 30 tex is cotton 19.7. C. P. Brooks, Cotton Manufacturing: 20's cotton = 30's worsted = 56's linen. */
  @Test
  void theHandbooksEquivalentsAgree() {
    assertThat(YarnNumber.parse("10 cotton").grist()).isEqualTo(YarnNumber.parse("15 worsted").grist());
    assertThat(YarnNumber.parse("20 cotton").grist()).isEqualTo(YarnNumber.parse("30 worsted").grist());
    assertThat(YarnNumber.parse("20 cotton").grist()).isEqualTo(YarnNumber.parse("56 lea").grist());
    assertThat(590.541 / YarnNumber.parse("tex 30").grist().tex().doubleValue()).isCloseTo(19.7, within(0.05));
  }

  /** C. P. Brooks, Calculations, Part IV (1898): 8800 yd of 5½-run weigh 16 oz; 4000 yd weighing 5 oz are 8-run. */
  @Test
  void aWeightOfYarnHasItsLength() {
    assertThat(YarnNumber.parse("5.5 run").grist().massOf(Length.of(8800, LengthUnit.YARD), RoundingMode.HALF_UP)).isEqualTo(Mass.parse("16 oz"));
    assertThat(YarnNumber.parse("8 run").grist().massOf(Length.of(4000, LengthUnit.YARD), RoundingMode.HALF_UP)).isEqualTo(Mass.parse("5 oz"));
  }

  @ParameterizedTest
  @ValueSource(strings = {"Nm 28/2", "10/2 cotton", "2/16 worsted", "40/2 lea", "20/2 spun silk", "5.5 run", "tex 100", "60 den", "1680 yd/lb", "3.4 m/g"})
  void whatIsPrintedReadsBack(String text) {
    YarnNumber number = YarnNumber.parse(text);
    assertThat(YarnNumber.parse(number.toString())).isEqualTo(number);
  }

  @ParameterizedTest
  @ValueSource(strings = {"", "cotton", "10", "0 cotton", "10/0 cotton", "10/1.5 cotton", "10 hanks", "tex 30/2", "-5 cotton", "10,5 cotton"})
  void whatIsNoYarnNumberIsRefusedWithWhatIsWanted(String text) {
    assertThatThrownBy(() -> YarnNumber.parse(text)).isInstanceOf(Unreadable.class).hasMessageContaining("wanted");
  }
}
