package hankbook.reckon;

import static org.assertj.core.api.Assertions.assertThat;

import hankbook.measure.Length;
import hankbook.measure.Percentage;
import hankbook.plan.Allowances;
import hankbook.yarn.FibreFamily;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.apache.commons.numbers.fraction.BigFraction;
import org.junit.jupiter.api.Test;

class OfferTest {
  private static final List<Lesson> OF_WOOL_TWILL = Cloths.percent(Learnable.WARP_TAKE_UP, Cloths.WOOL_TWILL, "7.1", "6.8", "8.2", "7.4", "7.5");
  private static final List<Lesson> OF_COTTON_TWILL = Cloths.percent(Learnable.WARP_TAKE_UP, Cloths.COTTON_TWILL, "4", "5");
  private static final List<Lesson> OF_WOOL_PLAIN = Cloths.percent(Learnable.WARP_TAKE_UP, Cloths.WOOL_PLAIN, "11");
  private static final Findings ALL = Cloths.findings(List.of(OF_WOOL_TWILL, OF_COTTON_TWILL, OF_WOOL_PLAIN));

  @Test
  void anOfferGivesItsReason() {
    assertThat(offer(Cloths.WOOL_TWILL)).isEqualTo("7.4 % of cloth, from 5 plans in 2/2 twill of wool, 5.8 to 9 %");
    assertThat(offer(Cloths.COTTON_TWILL)).isEqualTo("4.5 % of cloth, from 2 plans in 2/2 twill of cotton, up to 15.5 %");
  }

  /** One plan in plain of wool, one in plain; six of wool: (37 + 11)/6 = 8 %. */
  @Test
  void aGroupOfOnePlanGivesWayToAWiderOne() {
    assertThat(offer(Cloths.WOOL_PLAIN)).startsWith("8 % of cloth, from 6 plans of wool, ").endsWith("; odd among them: a with 11 %");
  }

  /** (37 + 9 + 11)/8 = 7.125 %. */
  @Test
  void aClothOfWhichNothingIsSaidGoesByAll() {
    assertThat(offer(Manner.ANY)).startsWith("7.1 % of cloth, from 8 plans of every kind, ");
    Manner silk = new Manner(Optional.of("Window loom"), Optional.empty(), Set.of(FibreFamily.SILK));
    assertThat(offer(silk)).startsWith("7.1 % of cloth, from 8 plans of every kind, ");
  }

  @Test
  void oneAloneIsOfferedAsOne() {
    Findings one = new Findings(OF_WOOL_PLAIN);
    assertThat(one.offer(Learnable.WARP_TAKE_UP, Cloths.WOOL_PLAIN).orElseThrow().words().english()).isEqualTo("11 % of cloth, from one plan only, in plain of wool");
    assertThat(one.offer(Learnable.DRAW_IN, Cloths.WOOL_PLAIN)).isEmpty();
  }

  @Test
  void loomWasteGoesByTheLoomWhateverIsWovenOnIt() {
    Findings findings = Cloths.findings(List.of(Cloths.waste(Cloths.WOOL_TWILL, "70 cm", "68 cm", "71 cm"), Cloths.waste(Cloths.COTTON_TWILL, "45 cm", "46 cm")));
    Manner silk = new Manner(Optional.of("Window loom"), Optional.empty(), Set.of(FibreFamily.SILK));
    Offer offer = findings.offer(Learnable.LOOM_WASTE, silk).orElseThrow();
    assertThat(offer.words().english()).isEqualTo("69.7 cm, from 3 plans on Window loom, 62.1 to 77.3 cm");
    assertThat(offer.in(Allowances.NONE).loomWaste()).isEqualTo(Length.parse("69.7 cm"));
  }

  @Test
  void timesAreToldByTheEndThePickAndThePiece() {
    List<Lesson> times = Stream.of("12", "13").map(seconds -> Cloths.lesson(Learnable.THREADING_TIME, Cloths.WOOL_TWILL, 0, BigFraction.of(Integer.parseInt(seconds)))).toList();
    assertThat(new Findings(times).offer(Learnable.THREADING_TIME, Cloths.WOOL_TWILL).orElseThrow().text()).isEqualTo("12.5 s an end");
    List<Lesson> hems = List.of(Cloths.lesson(Learnable.FINISHING_TIME, Cloths.WOOL_TWILL, 0, BigFraction.of(2000)));
    assertThat(new Findings(hems).offer(Learnable.FINISHING_TIME, Cloths.WOOL_TWILL).orElseThrow().text()).isEqualTo("33.3 min a piece");
  }

  @Test
  void anOfferIsTakenAsItIsToldAndReadBackTheSame() {
    Offer offer = ALL.offer(Learnable.WARP_TAKE_UP, Manner.ANY).orElseThrow();
    Allowances taken = offer.in(Allowances.NONE);
    assertThat(taken.warpTakeUp()).isEqualTo(Percentage.parse(offer.text()));
    assertThat(offer.said(taken)).contains(BigFraction.of(71, 1000));
  }

  @Test
  void whatAPlanSaysOfTheYarnIsHeldAgainstWhatWasLearntOfTheCloth() {
    Allowances ofYarn = Allowances.NONE.withWarpTakeUp(Percentage.parse("20 % of yarn"));
    assertThat(ALL.offer(Learnable.WARP_TAKE_UP, Manner.ANY).orElseThrow().said(ofYarn)).contains(BigFraction.of(1, 4));
  }

  @Test
  void nothingLessThanNothingIsOffered() {
    List<Lesson> grew = List.of(Cloths.lesson(Learnable.WINDING, Cloths.WOOL_TWILL, 0, BigFraction.of(-1, 100)), Cloths.lesson(Learnable.WINDING, Cloths.WOOL_TWILL, 1, BigFraction.of(-2, 100)));
    Offer offer = new Findings(grew).offer(Learnable.WINDING, Cloths.WOOL_TWILL).orElseThrow();
    assertThat(offer.words().english()).isEqualTo("0 %, from 2 plans of wool, -1.5 % on average, up to 9.5 %");
    assertThat(offer.in(Allowances.NONE)).isEqualTo(Allowances.NONE);
  }

  @Test
  void everyGroupIsListedAndThenAllOfThem() {
    assertThat(ALL.within(Manner.ANY)).extracting(found -> found.plans().english()).containsExactly("2 plans in 2/2 twill of cotton", "5 plans in 2/2 twill of wool", "1 plan in plain of wool", "8 plans of every kind");
    Manner wool = new Manner(Optional.empty(), Optional.empty(), Set.of(FibreFamily.WOOL));
    assertThat(ALL.within(wool)).extracting(found -> found.plans().english()).containsExactly("5 plans in 2/2 twill of wool", "1 plan in plain of wool", "6 plans of wool");
    assertThat(ALL.within(Cloths.WOOL_TWILL.only(Set.of(Telling.WEAVE, Telling.FIBRE)))).extracting(found -> found.plans().english()).containsExactly("5 plans in 2/2 twill of wool");
  }

  private static String offer(Manner manner) {
    return ALL.offer(Learnable.WARP_TAKE_UP, manner).orElseThrow().words().english();
  }
}
