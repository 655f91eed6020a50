package hankbook.reckon;

import static org.assertj.core.api.Assertions.assertThat;

import hankbook.measure.Length;
import hankbook.measure.Percentage;
import hankbook.measure.Sett;
import hankbook.plan.Allowances;
import hankbook.plan.Piece;
import hankbook.plan.Plan;
import hankbook.plan.Warp;
import hankbook.plan.Weft;
import hankbook.yarn.YarnColour;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import org.apache.commons.numbers.fraction.BigFraction;
import org.junit.jupiter.api.Test;

/** Worked by hand on {@link Runners}: 502 × 3.5 = 1757 m of Woad in the warp, 2160 × 0.5 = 1080 m of Chalk in the weft. */
class ReckoningTest {
  @Test
  void aClothThatTookWhatWasPlannedHasNothingToExplain() {
    Reckoning reckoning = Reckoning.of(asPlanned().made());
    assertThat(parts(reckoning, Runners.WOAD)).isEmpty();
    assertThat(parts(reckoning, Runners.CHALK)).isEmpty();
    assertThat(reckoning.planned()).isEqualTo(Length.parse("2837 m"));
  }

  /** 10 ends of 3.5 m are 35 m; 51 instead of 50 cm in the reed, 2160 × 1 cm = 21.6 m. */
  @Test
  void moreEndsTakeMoreWarpAndStandWiderForTheWeft() {
    assertCause(Cause.ENDS, new Runners().ends(510), "35 m", "21.6 m");
  }

  /** 502 × 10 cm = 50.2 m. */
  @Test
  void aLongerWarpTakesMoreOfItsYarn() {
    assertCause(Cause.WARP_LENGTH, new Runners().length("warp", "3.6 m"), "50.2 m", "0 m");
  }

  /** Finished 216 cm, off the loom 270 cm, as planned: 20 × 1.1 = 22 cm more warp, 502 × 22 cm = 110.44 m; 20 cm × 8/cm = 160 picks, 80 m. */
  @Test
  void moreClothTakesMoreOfBoth() {
    Runners longer = new Runners().length("warp", "3.72 m").length("loom waste", "53 cm").length("sampling", "22 cm").length("off loom", "270 cm").length("finished", "216 cm");
    assertCause(Cause.WARP_LENGTH, longer, "110.44 m", "80 m");
  }

  /** 256 cm off the loom for the 200 cm, 21.875 %: 6 × 1.1 = 6.6 cm more warp, 502 × 6.6 cm = 33.132 m; 48 picks, 24 m. */
  @Test
  void moreShrinkageTakesMoreOfBothForTheSameCloth() {
    Runners shrunk = new Runners().length("warp", "3.566 m").length("loom waste", "53 cm").length("sampling", "22 cm").length("off loom", "256 cm").length("finished", "200 cm");
    assertCause(Cause.SHRINKAGE, shrunk, "33.132 m", "24 m");
  }

  /** 280 cm of warp in 250 cm, 12 %: 502 × 5 cm = 25.1 m; of the sampling 22/1.12 instead of 22/1.1 cm are woven: 2158 (2157.14) instead of 2160 picks, 1 m less. */
  @Test
  void moreTakeUpTakesMoreWarp() {
    Runners taken = new Runners().length("warp", "3.55 m").length("loom waste", "53 cm").length("sampling", "22 cm").length("off loom", "250 cm");
    assertCause(Cause.TAKE_UP, taken, "25.1 m", "-1 m");
  }

  /** 11 cm more: 502 × 11 cm = 55.22 m; 10 cm of it cloth, 80 picks, 40 m. */
  @Test
  void moreSamplingTakesMoreOfBoth() {
    assertCause(Cause.SAMPLING, new Runners().length("warp", "3.61 m").length("sampling", "33 cm"), "55.22 m", "40 m");
  }

  /** 502 × 10 cm = 50.2 m. */
  @Test
  void moreLoomWasteTakesMoreWarp() {
    assertCause(Cause.LOOM_WASTE, new Runners().length("warp", "3.6 m").length("loom waste", "63 cm"), "50.2 m", "0 m");
  }

  /** Three ends of 3.5 m more than the two that were planned. */
  @Test
  void endsThatBrokeTakeAnEndEach() {
    assertCause(Cause.REPAIRS, new Runners().broken(5), "10.5 m", "0 m");
  }

  /** 40 picks of 0.5 m. */
  @Test
  void morePicksTakeMoreWeft() {
    assertCause(Cause.WEFT_COUNT, new Runners().picks(2200), "0 m", "20 m");
  }

  /** 2160 × 1 cm. */
  @Test
  void aWiderReedTakesMoreWeft() {
    assertCause(Cause.WEFT_WIDTH, new Runners().length("in reed", "51 cm"), "0 m", "21.6 m");
  }

  /** JCGM 100:2008: the expanded uncertainty is twice the standard one. */
  @Test
  void whatLiesWithinTwiceTheUncertaintyIsMeasurementAndWhatIsBeyondUnexplained() {
    Reckoning reckoning = Reckoning.of(new Runners().used(Runners.WOAD, "1767 m", "4 m").used(Runners.CHALK, "1075 m", "4 m").made());
    assertThat(parts(reckoning, Runners.WOAD)).isEqualTo(Map.of(Cause.MEASUREMENT, Length.parse("8 m"), Cause.UNEXPLAINED, Length.parse("2 m")));
    assertThat(parts(reckoning, Runners.CHALK)).isEqualTo(Map.of(Cause.MEASUREMENT, Length.parse("5 m").negated()));
  }

  /**
   * 510 ends, 5 mended; 210 cm of 280 cm off the loom, 25 %; 380 − 33 − 60 = 287 cm of warp in them, 2.5 %. Woad, 512 ends and then 515: 3.5 m long; with 210 cm of
   * cloth 210/0.8 × 1.1 + 75 = 363.75 cm; with 25 % 383; with 2.5 % 362; with 33 cm of sampling 373; with 60 cm of waste 380. Chalk, of 51 cm: 2160 picks;
   * 8 × (262.5 + 20) = 2260; 8 × (280 + 20) = 2400; 8 × (280 + 22/1.025) = 2412; 8 × (280 + 33/1.025) = 2498; counted 2500; and of 50.5 cm.
   */
  @Test
  void allCausesTogetherStandOneOnTheOther() {
    Runners woven = new Runners().ends(510).broken(5).picks(2500).length("warp", "3.8 m").length("loom waste", "60 cm").length("sampling", "33 cm");
    woven.length("in reed", "50.5 cm").length("off loom", "280 cm").length("finished", "210 cm");
    Reckoning reckoning = Reckoning.of(woven.used(Runners.WOAD, "1970 m", "4 m").used(Runners.CHALK, "1260 m", "4 m").made());
    assertThat(reached(reckoning, Runners.WOAD)).containsExactly(
        "ENDS 1792", "WARP_LENGTH 1862.4", "SHRINKAGE 1960.96", "TAKE_UP 1853.44", "SAMPLING 1909.76", "LOOM_WASTE 1945.6", "REPAIRS 1957", "MEASUREMENT 1965",
        "UNEXPLAINED 1970");
    assertThat(reached(reckoning, Runners.CHALK)).containsExactly(
        "ENDS 1101.6", "WARP_LENGTH 1152.6", "SHRINKAGE 1224", "TAKE_UP 1230.12", "SAMPLING 1273.98", "WEFT_COUNT 1275", "WEFT_WIDTH 1262.5", "MEASUREMENT 1260");
    assertThat(reckoning.part(Cause.ENDS)).isEqualTo(Length.parse("35 m").plus(Length.parse("21.6 m")));
    assertThat(reckoning.used().minus(reckoning.planned())).isEqualTo(Length.parse("3230 m").minus(Length.parse("2837 m")));
  }

  /** As long as planned, but 10 cm less loom waste: the 50.2 m went into cloth. */
  @Test
  void whatIsSparedInOnePlaceIsFoundInAnother() {
    Reckoning reckoning = Reckoning.of(new Runners().length("warp", "3.5 m").length("loom waste", "43 cm").used(Runners.WOAD, "1757 m", "1 m").made());
    assertThat(parts(reckoning, Runners.WOAD)).isEqualTo(Map.of(Cause.WARP_LENGTH, Length.parse("50.2 m"), Cause.LOOM_WASTE, Length.parse("50.2 m").negated()));
  }

  @Test
  void aWarpThatWasNotMeasuredIsAsLongAsPlannedWhateverBecameOfIt() {
    Reckoning reckoning = Reckoning.of(new Runners().length("loom waste", "43 cm").length("off loom", "256 cm").length("finished", "200 cm").used(Runners.WOAD, "1757 m", "1 m").made());
    assertThat(parts(reckoning, Runners.WOAD)).isEmpty();
    assertThat(reckoning.yarns().getLast().part(Cause.SHRINKAGE)).isEqualTo(Length.parse("24 m"));
  }

  @Test
  void aYarnThatStoodInAndTheOneThatWasNeverTakenAreBothTold() {
    YarnColour madder = new YarnColour("Skerry 16/2", "Madder");
    Reckoning reckoning = Reckoning.of(new Runners().used(Runners.CHALK, "1080 m", "1 m").used(madder, "1757 m", "2 m").made());
    assertThat(reckoning.yarns()).extracting(YarnAccount::yarn).containsExactly(Runners.WOAD, Runners.CHALK, madder);
    assertThat(parts(reckoning, Runners.WOAD)).isEqualTo(Map.of(Cause.UNEXPLAINED, Length.parse("1757 m").negated()));
    assertThat(parts(reckoning, madder)).isEqualTo(Map.of(Cause.MEASUREMENT, Length.parse("4 m"), Cause.UNEXPLAINED, Length.parse("1753 m")));
    assertThat(reckoning.part(Cause.MEASUREMENT).plus(reckoning.part(Cause.UNEXPLAINED))).isEqualTo(Length.ZERO);
  }

  /** Woad of 500 ends: 180 cm cloth, 20 cm hems, 50 cm lost in finishing, 25 cm taken up, 22 and 53 cm: × 500; and two ends of 3.5 m. */
  @Test
  void whatAPlanGivesAYarnToIsToldPartByPart() {
    Reckoning reckoning = Reckoning.of(asPlanned().made());
    Map<Purpose, Length> woad = new EnumMap<>(Purpose.class);
    List.of(Purpose.values()).forEach(purpose -> woad.put(purpose, Length.ZERO));
    woad.put(Purpose.CLOTH, Length.parse("900 m"));
    woad.put(Purpose.HEMS, Length.parse("100 m"));
    woad.put(Purpose.SHRINKAGE, Length.parse("250 m"));
    woad.put(Purpose.TAKE_UP, Length.parse("125 m"));
    woad.put(Purpose.SAMPLING, Length.parse("110 m"));
    woad.put(Purpose.LOOM_WASTE, Length.parse("265 m"));
    woad.put(Purpose.REPAIRS, Length.parse("7 m"));
    assertThat(reckoning.yarns().getFirst().purposes()).isEqualTo(woad);
    assertThat(reckoning.yarns().getLast().purposes()).containsEntry(Purpose.WEFT, Length.parse("1080 m"));
  }

  /**
   * Two kinds of piece with hems, fringe and gaps: (2 × 110 + 60)/0.8 = 350 cm off the loom, 385 cm of warp; 3 × 12 cm of fringe and two gaps of 2 cm, 22 cm of
   * sampling and 53 cm of loom waste: 500 cm. All as it was planned, with 10 cm more loom waste of a warp that is so much longer.
   */
  @Test
  void severalKindsOfPieceWithHemsFringesAndGapsAreHeldAgainstTheirSum() {
    Piece cloth = new Piece("cloth", 2, Length.parse("100 cm"), Length.parse("45 cm"), Length.parse("10 cm"), Length.parse("12 cm"));
    Piece mat = new Piece("mat", 1, Length.parse("60 cm"), Length.parse("40 cm"), Length.ZERO, Length.parse("12 cm"));
    Plan plan = Runners.plan().withPieces(List.of(cloth, mat)).withAllowances(gaps("2 cm"));
    Runners woven = new Runners(plan).length("warp", "5.1 m").length("loom waste", "63 cm").length("off loom", "350 cm").length("finished", "280 cm").pieces(3);
    Made made = woven.used(Runners.WOAD, "502 x 5.1 m", "1 m").used(Runners.CHALK, "8 x 370 x 50 cm", "1 m").made();
    assertThat(Realised.of(made).part(Way.WARP_TAKE_UP)).contains(BigFraction.of(1, 10));
    assertThat(parts(Reckoning.of(made), Runners.WOAD)).isEqualTo(Map.of(Cause.LOOM_WASTE, Length.parse("50.2 m")));
    assertThat(parts(Reckoning.of(made), Runners.CHALK)).isEmpty();
  }

  /** 11 cm more loom waste of a warp that is as long as the plan says leave 10 cm less of cloth: 80 picks of 20 cm. The warp takes what it took: 202 × 11 cm change places. */
  @Test
  void aWarpWoundAlreadyIsWovenAsFarAsItGoes() {
    Plan plan = wound(Optional.empty());
    Runners woven = new Runners(plan).length("loom waste", "64 cm").used(Runners.WOAD, "202 x 3 m", "1 m");
    Reckoning reckoning = Reckoning.of(woven.used(Runners.CHALK, "1 m", "0 m").made());
    assertThat(reckoning.yarns().getLast().part(Cause.WARP_LENGTH)).isEqualTo(Length.parse("80 x 20 cm").negated());
    assertThat(parts(reckoning, Runners.WOAD)).isEqualTo(Map.of(Cause.WARP_LENGTH, Length.parse("202 x 11 cm").negated(), Cause.LOOM_WASTE, Length.parse("202 x 11 cm")));
  }

  /** The weft says 1.5 m; 1.8 m were measured: 30 cm × 8/cm more of 20 cm. */
  @Test
  void aLengthThatTheWeftGivesIsHeldAgainstTheClothThatWasMeasured() {
    Runners woven = new Runners(wound(Optional.of(Length.parse("1.5 m")))).length("off loom", "1.8 m").used(Runners.CHALK, "8 x 200 x 20 cm", "0 m");
    assertThat(parts(Reckoning.of(woven.made()), Runners.CHALK)).isEqualTo(Map.of(Cause.WARP_LENGTH, Length.parse("240 x 20 cm")));
  }

  private static Plan wound(Optional<Length> woven) {
    Plan plan = Runners.plan();
    Warp warp = new Warp(plan.warp().sett(), OptionalInt.of(200), Optional.of(Length.metres(3)), 1, 0, plan.warp().order());
    Weft weft = new Weft(Runners.CHALK, Sett.perCentimetre(8), BigFraction.ONE, 1, BigFraction.ONE, woven);
    return new Plan("Wound", List.of(), warp, List.of(weft), plan.allowances(), 1);
  }

  private static Allowances gaps(String gap) {
    Allowances old = Runners.plan().allowances();
    return new Allowances(
        old.warpTakeUp(), Percentage.ZERO, Percentage.ZERO, old.lengthShrinkage(), old.widthShrinkage(), old.sampling(), old.loomWaste(), Length.parse(gap),
        Percentage.ZERO, old.repairEnds(), Length.ZERO);
  }

  private static Runners asPlanned() {
    Runners woven = new Runners().ends(500).broken(2).picks(2160).pieces(2).length("warp", "350 cm").length("loom waste", "53 cm").length("sampling", "22 cm");
    woven.length("in reed", "50 cm").length("off loom", "250 cm").length("finished", "200 cm").length("width off loom", "50 cm").length("width finished", "45 cm");
    return woven.used(Runners.WOAD, "1757 m", "4 m").used(Runners.CHALK, "1080 m", "4 m");
  }

  /** What was used is what this cause alone adds, so that nothing else is left. */
  private static void assertCause(Cause cause, Runners woven, String woad, String chalk) {
    woven.used(Runners.WOAD, "1 m", "0 m").used(Runners.CHALK, "1 m", "0 m");
    Reckoning reckoning = Reckoning.of(woven.made());
    for (Cause other : Cause.values()) {
      if (other.compareTo(Cause.MEASUREMENT) < 0) {
        assertThat(reckoning.yarns().getFirst().part(other)).as("Woad by " + other).isEqualTo(other == cause ? signed(woad) : Length.ZERO);
        assertThat(reckoning.yarns().getLast().part(other)).as("Chalk by " + other).isEqualTo(other == cause ? signed(chalk) : Length.ZERO);
      }
    }
  }

  private static Length signed(String length) {
    return length.startsWith("-") ? Length.parse(length.substring(1)).negated() : Length.parse(length);
  }

  private static Map<Cause, Length> parts(Reckoning reckoning, YarnColour yarn) {
    Map<Cause, Length> parts = new EnumMap<>(Cause.class);
    account(reckoning, yarn).steps().forEach(step -> parts.put(step.cause(), step.part()));
    return parts;
  }

  private static List<String> reached(Reckoning reckoning, YarnColour yarn) {
    return account(reckoning, yarn).steps().stream().map(step -> step.cause() + " " + step.after().toString().replace(" m", "")).toList();
  }

  private static YarnAccount account(Reckoning reckoning, YarnColour yarn) {
    return reckoning.yarns().stream().filter(account -> account.yarn().equals(yarn)).findFirst().orElseThrow();
  }
}
