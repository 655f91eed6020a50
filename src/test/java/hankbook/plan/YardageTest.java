package hankbook.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import hankbook.measure.Exact;
import hankbook.measure.Length;
import hankbook.measure.LengthUnit;
import hankbook.measure.Mass;
import hankbook.measure.MassUnit;
import hankbook.measure.Percentage;
import hankbook.measure.Sett;
import hankbook.measure.Unreadable;
import hankbook.measure.YarnNumber;
import hankbook.yarn.YarnColour;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.apache.commons.numbers.fraction.BigFraction;
import org.junit.jupiter.api.Test;

class YardageTest {
  private static final YarnColour CHALK = new YarnColour("Skerry 16/2", "Chalk");
  private static final YarnColour WOAD = new YarnColour("Skerry 16/2", "Woad");

  /** Worked by hand from the formulas: 48 / (0.92 × 0.94) cm in the reed; (280 + 32) / 0.92 × 1.08 + 30 + 70 cm = 466.2608 cm. */
  @Test
  void theExamplePlanOfFourTowelsIsReckoned() {
    Yardage yardage = Yardage.of(towels());
    assertThat(yardage.width().inReed()).isEqualTo(Length.parse("555.0 mm"));
    assertThat(yardage.width().ends()).isEqualTo(556);
    assertThat(yardage.width().finished(towels().allowances())).isEqualTo(Length.parse("48 cm"));
    assertThat(yardage.warp().total()).isEqualTo(Length.parse("467 cm"));
    assertThat(yardage.needs()).extracting(Need::yarn).containsExactly(CHALK, WOAD, CHALK);
    assertThat(yardage.needs()).extracting(Need::threads).containsExactly(445L, 111L, 3303L);
    assertThat(yardage.needs().get(0).length()).isEqualTo(Length.parse("445 x 4.67 m"));
  }

  /** C. P. Brooks, Cotton Manufacturing, "Weight of a piece": 2280 ends of 38 yd make 103 1/7 hanks, 3 lb 7 oz of 30's. */
  @Test
  void brooksWarpWeighsWhatTheHandbookSays() {
    Warp warp = new Warp(Sett.perInch(60), OptionalInt.of(2280), Optional.of(Length.of(38, LengthUnit.YARD)), 1, 0, List.of(all(CHALK)));
    Yardage yardage = Yardage.of(new Plan("Brooks", List.of(), warp, List.of(), Allowances.NONE, 1));
    assertThat(yardage.width().inReed()).isEqualTo(Length.of(38, LengthUnit.INCH));
    Length need = yardage.needs().get(0).length();
    assertThat(need.in(LengthUnit.YARD).divide(840)).isEqualTo(BigFraction.of(722, 7));
    Mass mass = YarnNumber.parse("30 cotton").grist().massOf(need, RoundingMode.HALF_UP);
    assertThat(mass.in(MassUnit.OUNCE).doubleValue()).isCloseTo(55, within(0.05));
  }

  /** The same piece's weft: 37½ in × 64 × 36 yd, 2 lb 13¾ oz of 36's; Taylor: reckoned on the width in the reed. */
  @Test
  void brooksWeftWeighsWhatTheHandbookSays() {
    Warp warp = new Warp(Sett.perInch(60), OptionalInt.of(2250), Optional.of(Length.of(38, LengthUnit.YARD)), 1, 0, List.of(all(CHALK)));
    Weft weft = new Weft(WOAD, Sett.perInch(64), BigFraction.ONE, 1, BigFraction.ONE, Optional.of(Length.of(36, LengthUnit.YARD)));
    Need need = Yardage.of(new Plan("Brooks", List.of(), warp, List.of(weft), Allowances.NONE, 1)).needs().get(1);
    assertThat(need.threads()).isEqualTo(64L * 36 * 36);
    Mass mass = YarnNumber.parse("36 cotton").grist().massOf(need.length(), RoundingMode.HALF_UP);
    assertThat(mass.in(MassUnit.OUNCE).doubleValue()).isCloseTo(45.75, within(0.1));
  }

  /** J. T. Taylor, Cotton Weaving and Designing, "Contraction": 94 yd of a 5-end satin at 4 % need about 98 yd of warp. */
  @Test
  void taylorsSatinNeedsItsWarp() {
    Piece piece = new Piece("satin", 1, Length.of(94, LengthUnit.YARD), Length.metres(1), Length.ZERO, Length.ZERO);
    for (String takeUp : List.of("4 % of cloth", "4 % of yarn")) {
      WarpLength warp = WarpLength.forPieces(List.of(piece), allowances(takeUp, "0 %", Length.ZERO));
      assertThat(warp.total().in(LengthUnit.YARD).doubleValue()).isCloseTo(98, within(0.3));
    }
  }

  /** Common practice: 2 repeats of 42 units with 15 and 16 more make 115 units, of 6 ends 690; 690 ends of 4 m take 2760 m; 40 to the inch 17.25 in. */
  @Test
  void aWarpOfSectionsIsCountedAndMeasured() {
    List<Section> sections = List.of(new Section(1, 15), new Section(2, 42), new Section(1, 16));
    assertThat(Section.unitsOf(sections)).isEqualTo(115);
    Warp warp = new Warp(Sett.perInch(40), OptionalInt.of(690), Optional.of(Length.metres(4)), 1, 0, List.of(all(CHALK)));
    Yardage yardage = Yardage.of(new Plan("Units", List.of(), warp, List.of(), Allowances.NONE, 3));
    assertThat(yardage.needs().get(0).length()).isEqualTo(Length.metres(2760));
    assertThat(yardage.width().inReed()).isEqualTo(Length.parse("17.25 in"));
    assertThat(yardage.width().finished(Allowances.NONE)).isEqualTo(Length.parse("17.25 in"));
  }

  @Test
  void anOrderThatLeavesEndsOverNamesTheDifference() {
    Warp warp =
        new Warp(
            Sett.perCentimetre(10), OptionalInt.of(100), Optional.of(Length.metres(4)), 1, 0, List.of(new OrderEntry(CHALK, new OrderEntry.Ends(97), 1)));
    Plan plan = new Plan("Short order", List.of(), warp, List.of(), Allowances.NONE, 1);
    assertThatThrownBy(() -> Yardage.of(plan))
        .isInstanceOf(Unreadable.class)
        .hasMessage("found '97 ends in the order', wanted 100 ends, as the warp has: 3 too few");
  }

  @Test
  void repairEndsAreWholeEndsOfTheYarnWithMostEnds() {
    Plan plain = towels();
    Allowances old = plain.allowances();
    Allowances repairs =
        new Allowances(
            old.warpTakeUp(), old.weftTakeUp(), old.drawIn(), old.lengthShrinkage(), old.widthShrinkage(), old.sampling(), old.loomWaste(), old.gap(),
            old.winding(), 4, old.roundUpTo());
    Yardage yardage = Yardage.of(new Plan(plain.name(), plain.pieces(), plain.warp(), plain.wefts(), repairs, 2));
    assertThat(yardage.needs().get(0).threads()).isEqualTo(449);
    assertThat(yardage.needs().get(1).threads()).isEqualTo(111);
  }

  static Plan towels() {
    Piece towel = new Piece("towel", 4, Length.parse("70 cm"), Length.parse("48 cm"), Length.parse("8 cm"), Length.ZERO);
    Warp warp =
        new Warp(Sett.perCentimetre(10), OptionalInt.empty(), Optional.empty(), 4, 0, List.of(shared(CHALK, "0.8"), shared(WOAD, "0.2")));
    Weft weft = new Weft(CHALK, Sett.perCentimetre(9), BigFraction.ONE, 1, BigFraction.ONE, Optional.empty());
    return new Plan("Quay towels", List.of(towel), warp, List.of(weft), allowances("8 % of cloth", "8 %", Length.parse("1 cm")), 2);
  }

  private static Allowances allowances(String takeUp, String shrinkage, Length step) {
    Length sampling = step.isZero() ? Length.ZERO : Length.parse("30 cm");
    Length waste = step.isZero() ? Length.ZERO : Length.parse("70 cm");
    Percentage shrunk = Percentage.parse(shrinkage);
    return new Allowances(
        Percentage.parse(takeUp), Percentage.parse("5 %"), Percentage.parse("6 %"), shrunk, shrunk, sampling, waste, Length.ZERO, Percentage.ZERO, 0, step);
  }

  private static OrderEntry all(YarnColour yarn) {
    return shared(yarn, "1");
  }

  private static OrderEntry shared(YarnColour yarn, String share) {
    BigDecimal part = new BigDecimal(share);
    return new OrderEntry(yarn, new OrderEntry.Share(Exact.of(part)), 1);
  }
}
