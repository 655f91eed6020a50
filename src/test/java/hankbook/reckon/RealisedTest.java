package hankbook.reckon;

import static org.assertj.core.api.Assertions.assertThat;

import hankbook.measure.Exact;
import hankbook.measure.Length;
import hankbook.plan.Allowances;
import hankbook.plan.OrderEntry;
import hankbook.plan.Piece;
import hankbook.plan.Plan;
import hankbook.plan.PlanVariants;
import hankbook.plan.Warp;
import hankbook.plan.WorkKind;
import java.math.BigDecimal;
import java.time.Duration;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import org.apache.commons.numbers.fraction.BigFraction;
import org.junit.jupiter.api.Test;

class RealisedTest {
  /** What was found, and how, in English. */
  private record Told(Object value, String from) {
    static Told of(Found<?> found) {
      return new Told(found.value(), found.from().english());
    }

    static Map<WorkKind, Told> of(Map<WorkKind, Found<Duration>> times) {
      Map<WorkKind, Told> told = new EnumMap<>(WorkKind.class);
      times.forEach((kind, found) -> told.put(kind, of(found)));
      return told;
    }
  }

  /** By hand: 350 − 50 − 20 = 280 cm woven up in 250 cm is 12 %; 250 to 200 cm 20 %; 50 to 48 cm 4 %; 48 to 42 cm 12.5 %; 1760 m in 503 ends of 3.5 m; 1134 m in 2160 picks of 0.5 m 5 %. */
  private static String from(Realised really, Way way) {
    return Optional.ofNullable(really.ways().get(way)).map(found -> found.from().english()).orElse("");
  }

  @Test
  void whatWasReallySoIsWorkedOutFromWhatWasMeasured() {
    Realised really = Realised.of(measured().made());
    assertThat(really.part(Way.WARP_TAKE_UP)).contains(part("0.12"));
    assertThat(really.part(Way.LENGTH_SHRINKAGE)).contains(part("0.2"));
    assertThat(really.part(Way.DRAW_IN)).contains(part("0.04"));
    assertThat(really.part(Way.WIDTH_SHRINKAGE)).contains(part("0.125"));
    assertThat(really.part(Way.WINDING)).contains(BigFraction.of(17600, 503 * 35).subtract(BigFraction.ONE));
    assertThat(really.part(Way.WEFT_TAKE_UP)).contains(part("0.05"));
    assertThat(really.loomWaste().orElseThrow().value()).isEqualTo(Length.parse("50 cm"));
    assertThat(really.sampling().orElseThrow().value()).isEqualTo(Length.parse("20 cm"));
    assertThat(really.unlikely()).isEmpty();
  }

  @Test
  void eachSaysFromWhatItWasWorkedOut() {
    Realised really = Realised.of(measured().made());
    assertThat(from(really, Way.WARP_TAKE_UP)).isEqualTo("2.5 m of cloth off the loom, of 3.5 m of warp less 0.5 m of loom waste, 0.2 m of sampling");
    assertThat(from(really, Way.DRAW_IN)).isEqualTo("0.5 m in the reed and 0.48 m at the fell");
    assertThat(from(really, Way.WINDING)).isEqualTo("1760 m used for 503 threads of 3.5 m, mended ends with them");
    assertThat(from(really, Way.WEFT_TAKE_UP)).isEqualTo("1134 m used as weft of 2160 picks across 0.5 m");
  }

  @Test
  void nothingIsKnownOfWhatWasNotMeasured() {
    Realised really = Realised.of(new Runners().used(Runners.WOAD, "1760 m", "5 m").used(Runners.CHALK, "1134 m", "5 m").made());
    assertThat(really).isEqualTo(new Realised(Map.of(), Optional.empty(), Optional.empty(), Map.of(), List.of()));
  }

  /** ISO 7211-3 and The Textile Institute, Textile Terms and Definitions: an 8 m cloth whose warp straightens to 8.6 m has 7.5 % crimp. */
  @Test
  void crimpIsThatOfTheStandard() {
    Realised really = Realised.of(new Runners().length("warp", "9.2 m").length("loom waste", "60 cm").length("sampling", "0 m").length("off loom", "8 m").made());
    assertThat(really.part(Way.WARP_TAKE_UP)).contains(part("0.075"));
  }

  /** C. P. Brooks, Cotton Manufacturing, "Weight of a piece": 38 in in the reed for 36 in of cloth, 38 yd of warp for 36 yd ("6 %", we say 5.56 %). */
  @Test
  void brooksPieceIsReadBackFromItsMeasures() {
    Runners piece = new Runners().length("warp", "38 yd").length("loom waste", "0 m").length("sampling", "0 m").length("off loom", "36 yd");
    Realised really = Realised.of(piece.length("in reed", "38 in").length("width off loom", "36 in").made());
    assertThat(Exact.plain(really.part(Way.WARP_TAKE_UP).orElseThrow(), 2)).isEqualTo("0.06");
    assertThat(really.part(Way.DRAW_IN)).contains(BigFraction.of(2, 38));
    assertThat(from(really, Way.DRAW_IN)).endsWith(" off the loom");
  }

  /** By hand: 250 m of thrums of 500 threads are 50 cm each. */
  @Test
  void loomWasteIsThatOfTheThrumsWhereItWasNotMeasuredAsALength() {
    Realised really = Realised.of(new Runners().used(Runners.WOAD, "1760 m", "250 m", "5 m").made());
    assertThat(really.loomWaste().map(Told::of)).contains(new Told(Length.parse("50 cm"), "250 m of thrums from 500 threads"));
  }

  /** By hand, of 240 threads of 2 m: 480 m; wound with 5 % more 504 m; of 604 m that leaves 100 m for 200 picks of 0.48 m, 96 m: 4 1/6 %. */
  @Test
  void theTakeUpOfAWeftThatIsInTheWarpTooIsToldApartByTheYarnThatIsNot() {
    Plan plan = Runners.plan();
    OrderEntry half = new OrderEntry(Runners.CHALK, new OrderEntry.Share(BigFraction.of(1, 2)), 1);
    OrderEntry other = new OrderEntry(Runners.WOAD, new OrderEntry.Share(BigFraction.of(1, 2)), 1);
    Plan both = new Plan(plan.name(), plan.pieces(), warpOf(plan, List.of(half, other)), plan.wefts(), plan.allowances(), 1);
    Runners woven = new Runners(both).ends(480).broken(0).length("warp", "2 m").length("in reed", "48 cm").picks(200);
    Realised really = Realised.of(woven.used(Runners.CHALK, "604 m", "1 m").used(Runners.WOAD, "504 m", "1 m").made());
    assertThat(really.part(Way.WINDING)).contains(part("0.05"));
    assertThat(really.part(Way.WEFT_TAKE_UP)).contains(BigFraction.of(100, 96).subtract(BigFraction.ONE));
  }

  /** By hand: of three pieces with 12 cm of fringe each planned four were made, 48 cm and three gaps of 4 cm: 60 cm; 350 − 60 = 290 cm for 250 cm is 16 %. */
  @Test
  void fringesAndGapsAreThoseOfThePiecesThatWereMade() {
    Runners woven = new Runners(fringed()).length("warp", "350 cm").length("loom waste", "0 m").length("sampling", "0 m").length("off loom", "250 cm").pieces(4);
    assertThat(Realised.of(woven.made()).part(Way.WARP_TAKE_UP)).contains(part("0.16"));
  }

  @Test
  void aWarpWhoseLengthThePlanGivesNeedsNoMeasuring() {
    Plan given = PlanVariants.withLength(Runners.plan(), Length.parse("350 cm"));
    Realised really = Realised.of(new Runners(given).length("loom waste", "53 cm").length("off loom", "250 cm").made());
    assertThat(really.part(Way.WARP_TAKE_UP)).contains(part("0.1"));
    assertThat(from(really, Way.WARP_TAKE_UP)).endsWith("0.22 m of sampling as planned");
  }

  @Test
  void whatNoClothCanBeIsToldAndNotUsed() {
    Runners woven = new Runners().length("warp", "350 cm").length("loom waste", "50 cm").length("sampling", "0 m").length("off loom", "4 m");
    Realised really = Realised.of(woven.length("width finished", "5 cm").length("width off loom", "45 cm").length("in reed", "45.2 cm").made());
    assertThat(really.ways()).containsOnlyKeys(Way.DRAW_IN);
    assertThat(really.unlikely()).extracting(Unlikely::words).containsExactly(
        "warp take-up would be -25 % by 4 m of cloth off the loom, of 3.5 m of warp less 0.5 m of loom waste; likely is from -5 % to 100 %, so it is not used.",
        "width shrinkage would be 88.89 % by 0.45 m off the loom and 0.05 m finished; likely is from -10 % to 80 %, so it is not used.");
  }

  @Test
  void loomWasteAsLongAsTheWarpIsToldAndNotUsed() {
    Realised really = Realised.of(new Runners().length("warp", "350 cm").length("loom waste", "3.5 m").length("off loom", "2 m").made());
    assertThat(really.loomWaste()).isEmpty();
    assertThat(really.ways()).isEmpty();
    assertThat(really.unlikely()).extracting(never -> never.wanted().english()).containsExactly("less than the 3.5 m of the warp");
  }

  /** By hand: 250 min for 500 ends is half a minute; 36 h for 2160 picks a minute; 90 min for three pieces half an hour. */
  @Test
  void timesAreThoseOfOneEndPickOrPiece() {
    Runners woven = new Runners().ends(500).picks(2160).pieces(3);
    woven.time(WorkKind.THREADING, Duration.ofMinutes(250)).time(WorkKind.WEAVING, Duration.ofHours(36)).time(WorkKind.FINISHING, Duration.ofMinutes(90));
    assertThat(Told.of(Realised.of(woven.made()).times())).containsExactly(
        Map.entry(WorkKind.THREADING, new Told(Duration.ofSeconds(30), "4 h 10 min for 500 ends")),
        Map.entry(WorkKind.WEAVING, new Told(Duration.ofMinutes(1), "36 h 0 min for 2160 picks")),
        Map.entry(WorkKind.FINISHING, new Told(Duration.ofMinutes(30), "1 h 30 min for 3 pieces")));
  }

  @Test
  void whatWasNotCountedIsAsPlannedAndNoPiecesTakeNoTime() {
    Runners woven = new Runners().pieces(0).time(WorkKind.BEAMING, Duration.ofMinutes(50)).time(WorkKind.FINISHING, Duration.ofMinutes(90));
    assertThat(Told.of(Realised.of(woven.made()).times())).containsExactly(Map.entry(WorkKind.BEAMING, new Told(Duration.ofSeconds(6), "0 h 50 min for 500 ends as planned")));
  }

  /** A warp that gives its own ends and length. */
  @Test
  void aPlanWithoutPiecesIsOnePieceToFinish() {
    Plan plan = Runners.plan();
    Warp warp = new Warp(plan.warp().sett(), OptionalInt.of(500), Optional.of(Length.metres(4)), 1, 0, plan.warp().order());
    Plan cloth = new Plan(plan.name(), List.of(), warp, plan.wefts(), plan.allowances(), 1);
    assertThat(Told.of(Realised.of(new Runners(cloth).time(WorkKind.FINISHING, Duration.ofMinutes(90)).made()).times())).containsExactly(
        Map.entry(WorkKind.FINISHING, new Told(Duration.ofMinutes(90), "1 h 30 min for all of the cloth, since no pieces are planned")));
  }

  static Runners measured() {
    Runners woven = new Runners().ends(500).broken(3).picks(2160).pieces(2);
    woven.length("warp", "350 cm").length("loom waste", "50 cm").length("sampling", "20 cm").length("in reed", "50 cm");
    woven.length("off loom", "250 cm").length("finished", "200 cm").length("width on loom", "48 cm").length("width off loom", "46 cm").length("width finished", "42 cm");
    return woven.used(Runners.WOAD, "1760 m", "4 m").used(Runners.CHALK, "1134 m", "4 m");
  }

  private static Plan fringed() {
    Plan plan = Runners.plan();
    Allowances old = plan.allowances();
    Length gap = Length.parse("4 cm");
    Piece runner = plan.pieces().getFirst();
    Piece fringed = new Piece("scarf", 3, runner.length(), runner.width(), Length.ZERO, Length.parse("12 cm"));
    return plan.withPieces(List.of(fringed)).withAllowances(
        new Allowances(
            old.warpTakeUp(), old.weftTakeUp(), old.drawIn(), old.lengthShrinkage(), old.widthShrinkage(), old.sampling(), old.loomWaste(), gap, old.winding(), 0,
            old.roundUpTo()));
  }

  private static Warp warpOf(Plan plan, List<OrderEntry> order) {
    Warp old = plan.warp();
    return new Warp(old.sett(), old.ends(), old.length(), 1, 0, order);
  }

  private static BigFraction part(String decimal) {
    return Exact.of(new BigDecimal(decimal));
  }
}
