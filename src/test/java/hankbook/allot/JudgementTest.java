package hankbook.allot;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import hankbook.measure.Length;
import hankbook.measure.Mass;
import hankbook.measure.Percentage;
import hankbook.measure.Unreadable;
import hankbook.yarn.Doubts;
import hankbook.yarn.Uncertainty;
import hankbook.yarn.YarnColour;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/** What can be set, and how a risk is said. */
class JudgementTest {
  @ParameterizedTest
  @EnumSource
  void aDefaultIsWithinItsRangeAndFoundByItsKey(Setting setting) {
    assertThat(setting.tidy(setting.standard())).isEqualTo(setting.standard());
    assertThat(Setting.named(setting.key())).isEqualTo(setting);
  }

  @Test
  void withNothingSetTheDefaultsHold() {
    assertThat(Judgement.DEFAULT.doubts()).isEqualTo(Doubts.DEFAULT);
    assertThat(Judgement.DEFAULT.usefulRemnant()).isEqualTo(Length.metres(5));
    assertThat(Judgement.DEFAULT.percentage(Setting.RISK_LIMIT)).isEqualTo(Percentage.parse("5 %"));
    assertThat(Judgement.DEFAULT.percentage(Setting.STAND_IN_GRIST)).isEqualTo(Percentage.parse("10 %"));
  }

  @Test
  void whatIsSetHolds() {
    Judgement judgement = Judgement.DEFAULT.with(Setting.BALANCE, " 0.1 g ").with(Setting.TURNS, "0.50 %").with(Setting.REMNANT, "2 x 1 m");
    assertThat(judgement.doubts()).isEqualTo(new Doubts(Percentage.parse("3 %"), new Mass(100), Percentage.parse("2 %"), Percentage.parse("0.5 %")));
    assertThat(judgement.set()).isEqualTo(Map.of(Setting.BALANCE, "0.1 g", Setting.TURNS, "0.5 %", Setting.REMNANT, "2 m"));
  }

  @ParameterizedTest
  @CsvSource({
    "riskLimit, 51 %, from 0.01 % to 50 %", "riskLimit, 5, a percentage such as 3 %", "label, 3 % of cloth, a percentage such as 3 %",
    "balance, 0 g, from 0.001 g to 100 g", "balance, 1 m, 'a mass such as 100 g (mg, g, kg, oz or lb)'", "remnant, 1001 m, from 0 m to 1000 m"
  })
  void whatIsOutsideItsRangeOrOfAnotherKindIsRefused(String key, String content, String wanted) {
    assertThatThrownBy(() -> Setting.named(key).tidy(content)).isInstanceOf(Unreadable.class).hasMessage("found '" + content + "', wanted " + wanted);
  }

  @Test
  void aKeyThatIsNoneIsRefusedWithThoseThatAre() {
    assertThatThrownBy(() -> Setting.named("risk")).hasMessageStartingWith("found 'risk', wanted one of label, balance, grist, turns, riskLimit, remnant, standInGrist");
  }

  @Test
  void theLimitDecidesWhatIsTight() {
    Cover cover = new Cover(new YarnColour("Fjara", "Ash"), Length.metres(1000), Length.metres(1100), Length.metres(100), true);
    assertThat(cover.verdict()).isEqualTo(Verdict.TIGHT);
    assertThat(new Cover(cover.yarn(), cover.need(), cover.free(), Uncertainty.outright(Length.metres(100)), true, Percentage.parse("16 %")).verdict()).isEqualTo(Verdict.COVERED);
  }

  @ParameterizedTest
  @CsvSource({
    "0, under 1 in 1000", "0.00099, under 1 in 1000", "0.001, about 1 in 1000", "0.0029, about 1 in 350", "0.0115, about 1 in 85", "0.0714, about 1 in 14", "0.109, about 1 in 9",
    "0.2, about 1 in 5", "0.34, about 1 in 3", "0.5, about 1 in 2", "0.55, about 1 in 2", "0.56, more likely than not", "0.99, more likely than not", "0.991, almost certain", "1, almost certain"
  })
  void aRiskIsSaidAsOneWouldSayIt(double chance, String words) {
    assertThat(new Risk(chance)).hasToString(words);
  }

  @Test
  void aRiskIsAChance() {
    assertThatThrownBy(() -> new Risk(-0.01)).isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> new Risk(1.01)).isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> new Risk(Double.NaN)).isInstanceOf(IllegalArgumentException.class);
    assertThat(Risk.of(Length.ZERO, Length.ZERO)).isEqualTo(new Risk(0));
    assertThat(Risk.of(Length.ZERO.minus(Length.metres(1)), Length.ZERO)).isEqualTo(new Risk(1));
  }
}
