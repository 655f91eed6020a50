package hankbook.reckon;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hankbook.allot.Cover;
import hankbook.allot.Judgement;
import hankbook.allot.PlanCheck;
import hankbook.allot.Verdict;
import hankbook.measure.Length;
import hankbook.measure.Percentage;
import hankbook.measure.Sett;
import hankbook.plan.Allowances;
import hankbook.plan.NeedSpread;
import hankbook.plan.OrderEntry;
import hankbook.plan.Piece;
import hankbook.plan.Plan;
import hankbook.plan.Warp;
import hankbook.plan.Weft;
import hankbook.yarn.PackageForm;
import hankbook.yarn.Skein;
import hankbook.yarn.Turns;
import hankbook.yarn.Uncertainty;
import hankbook.yarn.YarnColour;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.apache.commons.numbers.fraction.BigFraction;
import org.junit.jupiter.api.Test;

/** A plan of 100 ends for 10 m of cloth, no shrinkage: each per cent of take-up is 10 m of warp. */
class SensitivityTest {
  private static final YarnColour ASH = new YarnColour("Fjara 2/20", "Ash");
  private static final YarnColour PEAT = new YarnColour("Fjara 2/20", "Peat");
  /** s = √(1.1/4) per cent, see {@link FindingTest}; times √1.2. */
  private static final double OF_TAKE_UP = Math.sqrt(1.1 / 4 * 1.2);
  private static final List<Lesson> TAKE_UP = Cloths.percent(Learnable.WARP_TAKE_UP, Cloths.WOOL_TWILL, "7.1", "6.8", "8.2", "7.4", "7.5");
  /** Mean 70, s = 2 cm; times √(4/3). */
  private static final List<Lesson> WASTE = Cloths.waste(Cloths.WOOL_TWILL, "68 cm", "70 cm", "72 cm");
  private static final double OF_WASTE = 0.02 * Math.sqrt(4.0 / 3);

  @Test
  void eachAllowanceMakesTheNeedAsUnsureAsItScatters() {
    NeedSpread spread = spread(plan("8 %", "0 m"), List.of(TAKE_UP, WASTE));
    assertThat(spread.of(ASH)).extracting(Uncertainty.Part::words)
        .containsExactly("warp take-up, learnt from 5 plans in 2/2 twill of wool", "loom waste, learnt from 3 plans on Window loom");
    assertThat(metres(spread, 0)).isCloseTo(OF_TAKE_UP * 10, within(0.005));
    assertThat(metres(spread, 1)).isCloseTo(OF_WASTE * 100, within(0.005));
    assertThat(spread.of(PEAT)).isEmpty();
  }

  /** 30 picks/cm × 10 m of 50 cm in the reed: 15 km of weft, so a per cent more is 150 m; and none of the warp. */
  @Test
  void weftTakeUpIsOfTheWeftAlone() {
    NeedSpread spread = spread(plan("8 %", "0 m"), List.of(Cloths.percent(Learnable.WEFT_TAKE_UP, Cloths.WOOL_TWILL, "4", "5", "6")));
    assertThat(spread.of(ASH)).isEmpty();
    assertThat(spread.of(PEAT).getFirst().error().metres().doubleValue()).isCloseTo(150 * Math.sqrt(4.0 / 3), within(0.01));
  }

  /** A warp rounded up to whole metres stays as long as it was whatever half a per cent does; what it must hold does not. */
  @Test
  void roundingUpTheWarpHidesNothing() {
    assertThat(metres(spread(plan("8 %", "5 m"), List.of(TAKE_UP)), 0)).isCloseTo(OF_TAKE_UP * 10, within(0.005));
  }

  @Test
  void anAllowanceOfNothingIsAsUnsureAsAnyOther() {
    assertThat(metres(spread(plan("0 %", "0 m"), List.of(TAKE_UP)), 0)).isCloseTo(OF_TAKE_UP * 10, within(0.005));
    assertThat(metres(spread(plan("0.1 %", "0 m"), List.of(TAKE_UP)), 0)).isCloseTo(OF_TAKE_UP * 10, within(0.005));
  }

  @Test
  void twoPlansAreTooFewAndAWiderGroupServesInstead() {
    List<Lesson> two = TAKE_UP.subList(0, 2);
    assertThat(spread(plan("8 %", "0 m"), List.of(two)).parts()).isEmpty();
    List<Lesson> others = Cloths.percent(Learnable.WARP_TAKE_UP, Cloths.COTTON_TWILL, "7.5");
    assertThat(spread(plan("8 %", "0 m"), List.of(two, others)).of(ASH)).extracting(part -> part.cause().english()).containsExactly("warp take-up, learnt from 3 plans in 2/2 twill");
    assertThat(spread(plan("8 %", "0 m"), List.of()).parts()).isEmpty();
  }

  /** The width moves the ends; the groups of an order that is counted in ends keep their proportion. */
  @Test
  void anOrderThatCountsItsEndsFollowsTheWidth() {
    Warp warp = new Warp(Sett.perCentimetre(2), OptionalInt.empty(), Optional.empty(), 1, 0, List.of(ends(ASH, 60), ends(PEAT, 40)));
    Plan plan = new Plan("Counted", List.of(piece()), warp, List.of(), Allowances.NONE, 1);
    NeedSpread spread = new Sensitivity(plan, new Findings(Cloths.percent(Learnable.DRAW_IN, Cloths.WOOL_TWILL, "2", "5", "8")), Cloths.WOOL_TWILL).spread();
    // s = 3, u = 3.4641 %: 100/(1 - u) is 103.59, so 104 ends of 10 m where 100 are planned; 62 and 42 of each yarn.
    assertThat(spread.of(ASH).getFirst().error()).isEqualTo(Length.metres(20));
    assertThat(spread.of(PEAT).getFirst().error()).isEqualTo(Length.metres(20));
  }

  /** 1100 m turned off a reel are known to 11 m; the need of 1080 m to 5.745 and 2.309 m: u = 12.62 m and the risk Φ(−20/12.62) = 5.6 %, where it was 3.5 %. */
  @Test
  void theRiskIsOfWhatIsFreeAndWhatIsNeededTogether() {
    NeedSpread spread = spread(plan("8 %", "0 m"), List.of(TAKE_UP, WASTE));
    Cover sure = cover(NeedSpread.UNKNOWN);
    Cover unsure = cover(spread);
    assertThat(sure.verdict()).isEqualTo(Verdict.COVERED);
    assertThat(sure.uncertainty()).isEqualTo(Length.metres(11));
    assertThat(unsure.verdict()).isEqualTo(Verdict.TIGHT);
    assertThat(unsure.need()).isEqualTo(sure.need());
    assertThat(unsure.risk()).isCloseTo(0.0565, within(0.0005));
    double squares = unsure.doubt().parts().stream().mapToDouble(part -> Math.pow(part.error().metres().doubleValue(), 2)).sum();
    assertThat(Math.sqrt(squares)).isCloseTo(unsure.uncertainty().metres().doubleValue(), within(0.0002));
    assertThat(unsure.doubt().parts()).extracting(Uncertainty.Part::skeins).containsExactly(1, 0, 0);
  }

  private static Cover cover(NeedSpread spread) {
    Skein skein = new Skein(
        "S1", ASH, "", "wool", Optional.empty(), PackageForm.CONE, Optional.empty(), Optional.of(new Turns(550, Length.metres(2))), Optional.empty(), false, "", "",
        Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty());
    return PlanCheck.of(plan("8 %", "0 m"), List.of(skein), Judgement.DEFAULT, spread).covers().getFirst();
  }

  private static NeedSpread spread(Plan plan, List<List<Lesson>> lessons) {
    return new Sensitivity(plan, Cloths.findings(lessons), Cloths.WOOL_TWILL).spread();
  }

  private static double metres(NeedSpread spread, int part) {
    return spread.of(ASH).get(part).error().metres().doubleValue();
  }

  private static Plan plan(String takeUp, String step) {
    Warp warp = new Warp(Sett.perCentimetre(2), OptionalInt.of(100), Optional.empty(), 1, 0, List.of(ends(ASH, 100)));
    Weft weft = new Weft(PEAT, Sett.perCentimetre(30), BigFraction.ONE, 1, BigFraction.ONE, Optional.empty());
    Allowances allowances = Allowances.NONE.withWarpTakeUp(Percentage.parse(takeUp)).withRoundUpTo(Length.parse(step));
    return new Plan("Shawl", List.of(piece()), warp, List.of(weft), allowances, 1);
  }

  private static Piece piece() {
    return new Piece("shawl", 1, Length.metres(10), Length.parse("50 cm"), Length.ZERO, Length.ZERO);
  }

  private static OrderEntry ends(YarnColour yarn, int ends) {
    return new OrderEntry(yarn, new OrderEntry.Ends(ends), 1);
  }
}
