package hankbook.gear;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import hankbook.measure.Grist;
import hankbook.measure.Length;
import hankbook.measure.LengthUnit;
import hankbook.measure.Sett;
import hankbook.measure.Unreadable;
import hankbook.measure.YarnNumber;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.apache.commons.numbers.fraction.BigFraction;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SettAdviceTest {
  private static final Length INCH = Length.of(1, LengthUnit.INCH);
  private static final Grist EIGHT_TWO = YarnNumber.parse("8/2 cotton").grist();

  /** T. R. Ashenhurst's rule as handweavers use it, k 0.90: 8/2 cotton, 3360 yd/lb, has 52 diameters, fullest sett 26 in plain weave and 34 in 2/2 twill. The source gives whole ends, rounded down. */
  @ParameterizedTest
  @CsvSource({"plain, 26", "2/2 twill, 34"})
  void eightTwoCottonIsSetAsAshenhurstsRuleIsPublished(String weave, int fullest) {
    Diameters diameters = Diameters.of(EIGHT_TWO, Diameters.FIRM);
    assertThat(EIGHT_TWO.yardsPerPound()).isEqualTo(BigFraction.of(3360));
    assertThat(diameters.perInch().intValue()).isEqualTo(52);
    Sett sett = new SettAdvice(diameters, Weave.parse(weave), SettAdvice.THREE_QUARTERS).fullest(INCH);
    assertThat(sett.threads().setScale(0, RoundingMode.DOWN)).isEqualByComparingTo(BigDecimal.valueOf(fullest));
  }

  /** J. T. Taylor, Cotton Weaving and Designing, 6th ed. 1909, "The firmness of cloth": 32's cotton has 156 diameters to the inch, so k is 0.95 there. */
  @Test
  void taylorsThirtyTwosHaveTheDiametersOfHisHandbook() {
    Grist thirtyTwos = YarnNumber.parse("32 cotton").grist();
    assertThat(Diameters.of(thirtyTwos, BigFraction.of(95, 100)).perInch().doubleValue()).isCloseTo(156, within(0.5));
  }

  /** Worked by hand: √3360 = 57.966; 0.84 × 57.966 / 2 = 24.3 fullest, three quarters of it 18.2, a tenth of an end rounded down. */
  @Test
  void softYarnIsSetMoreOpenlyAndAWorkingSettIsAPartOfTheFullest() {
    SettAdvice soft = new SettAdvice(Diameters.of(EIGHT_TWO, Diameters.SOFT), Weave.PLAIN, SettAdvice.THREE_QUARTERS);
    assertThat(soft.fullest(INCH)).hasToString("24.3/in");
    assertThat(soft.working(INCH)).hasToString("18.2/in");
    assertThat(soft.fullest(Length.of(1, LengthUnit.CENTIMETRE))).hasToString("9.5/cm");
  }

  /** Two threads of 16/2 weigh together what one of 8/2 weighs (ISO 1144: the grists of folded threads add). */
  @Test
  void threadsThatGoAsOneEndAreAsThickAsTheirGristsTogether() {
    Grist sixteenTwo = YarnNumber.parse("16/2 cotton").grist();
    assertThat(sixteenTwo.with(sixteenTwo)).isEqualTo(EIGHT_TWO).isEqualTo(sixteenTwo.times(2));
  }

  @Test
  void oneFourthTheYardageIsTwiceTheDiameterAndAMixtureLiesBetween() {
    Diameters fine = Diameters.of(YarnNumber.parse("6400 yd/lb").grist(), BigFraction.ONE);
    Diameters mixed =
        Diameters.of(
            List.of(new Diameters.Kind(YarnNumber.parse("6400 yd/lb").grist(), 1), new Diameters.Kind(YarnNumber.parse("1600 yd/lb").grist(), 1)), BigFraction.ONE);
    assertThat(fine.perInch()).isEqualTo(BigFraction.of(80));
    // Mean diameter (1/80 + 1/40) / 2 in.
    assertThat(mixed.perInch()).isEqualTo(BigFraction.of(160, 3));
  }

  @Property(tries = 200)
  void moreOfAFinerYarnNeverOpensTheSett(@ForAll @IntRange(min = 1, max = 40) int fine, @ForAll @IntRange(min = 1, max = 40) int more) {
    assertThat(mixed(fine + more).perInch()).isGreaterThan(mixed(fine).perInch());
  }

  private static Diameters mixed(int fine) {
    return Diameters.of(List.of(new Diameters.Kind(YarnNumber.parse("20/2 cotton").grist(), fine), new Diameters.Kind(EIGHT_TWO, 3)), Diameters.FIRM);
  }

  @Test
  void aNumberOutOfItsRangeIsRefused() {
    assertThatThrownBy(() -> Diameters.of(EIGHT_TWO, BigFraction.of(3)))
        .isInstanceOf(Unreadable.class)
        .hasMessage("found '3', wanted a k over 0, to 2: 0.9 for firm yarn, 0.84 for soft woollen");
    assertThatThrownBy(() -> new SettAdvice(Diameters.of(EIGHT_TWO, Diameters.FIRM), Weave.PLAIN, BigFraction.of(5, 4)))
        .isInstanceOf(Unreadable.class)
        .hasMessage("found '1.25', wanted a part of the fullest sett over 0, to 1, such as 3/4");
  }
}
