package hankbook.reckon;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hankbook.measure.Length;
import hankbook.measure.Percentage;
import hankbook.measure.Sett;
import hankbook.plan.Allowances;
import hankbook.plan.Making;
import hankbook.plan.Need;
import hankbook.plan.OrderEntry;
import hankbook.plan.Piece;
import hankbook.plan.Plan;
import hankbook.plan.PlanVariants;
import hankbook.plan.Warp;
import hankbook.plan.Weft;
import hankbook.plan.Yardage;
import hankbook.yarn.YarnColour;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.OptionalLong;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.apache.commons.numbers.fraction.BigFraction;

/** Plans and measurements of any kind: with pieces and without, ends given and reckoned, yarns in the warp, the weft and both. */
class ReckoningProperties {
  private static final List<YarnColour> YARNS =
      List.of(new YarnColour("Skerry 16/2", "Chalk"), new YarnColour("Skerry 16/2", "Woad"), new YarnColour("Fulmar 8/1", "Peat"), new YarnColour("Fulmar 8/1", "Moss"));

  @Property(tries = 400, seed = "20261126")
  void thePartsSumToTheDifferenceWhateverWasMeasured(@ForAll long seed) {
    Random random = new Random(seed);
    Made made = new Made(plan(random), actuals(random), used(random));
    Reckoning reckoning = Reckoning.of(made);
    Length planned = Yardage.of(made.plan()).needs().stream().map(Need::length).reduce(Length.ZERO, Length::plus);
    assertThat(reckoning.planned()).isEqualTo(planned);
    for (YarnAccount account : reckoning.yarns()) {
      assertThat(account.causes()).containsOnlyKeys(Cause.values());
      assertThat(account.causes().values().stream().reduce(Length.ZERO, Length::plus)).isEqualTo(account.used().minus(account.planned()));
      assertThat(account.purposes().values().stream().reduce(Length.ZERO, Length::plus)).isEqualTo(account.planned());
      assertThat(account.part(Cause.MEASUREMENT)).isBetween(account.uncertainty().times(-2), account.uncertainty().times(2));
      assertThat(Math.multiplyHigh(account.part(Cause.MEASUREMENT).tenthsOfMillimetre(), account.part(Cause.UNEXPLAINED).tenthsOfMillimetre())).isGreaterThanOrEqualTo(0);
    }
  }

  @Property(tries = 400, seed = "20261127")
  void aCauseThatWasNotMeasuredIsNothing(@ForAll long seed) {
    Random random = new Random(seed);
    Made made = new Made(plan(random), actuals(random), used(random));
    Reckoning reckoning = Reckoning.of(made);
    WarpAsWound warp = made.actuals().warp();
    ClothAsWoven cloth = made.actuals().cloth();
    boolean wound = warp.length().isPresent() || made.plan().warp().length().isPresent();
    Map<Cause, Boolean> measured =
        Map.of(
            Cause.ENDS, warp.ends().isPresent(), Cause.WARP_LENGTH, wound || cloth.lengthOffLoom().isPresent() || cloth.lengthFinished().isPresent(),
            Cause.SHRINKAGE, reckoning.really().part(Way.LENGTH_SHRINKAGE).isPresent(), Cause.TAKE_UP, reckoning.really().part(Way.WARP_TAKE_UP).isPresent(),
            Cause.SAMPLING, warp.sampling().isPresent(), Cause.LOOM_WASTE, reckoning.really().loomWaste().isPresent(), Cause.REPAIRS, warp.broken().isPresent(),
            Cause.WEFT_COUNT, cloth.picks().isPresent(), Cause.WEFT_WIDTH, warp.widthInReed().isPresent());
    measured.forEach((cause, was) -> {
      if (!was) {
        assertThat(reckoning.yarns()).allMatch(account -> account.part(cause).isZero());
      }
    });
  }

  @Property(tries = 300, seed = "20261128")
  void whereEverythingWasAsPlannedOnlyTheUseItselfIsLeftToExplain(@ForAll long seed) {
    Random random = new Random(seed);
    Plan plan = plan(random);
    Reckoning reckoning = Reckoning.of(new Made(plan, asPlanned(plan), withoutThrums(used(random))));
    for (YarnAccount account : reckoning.yarns()) {
      assertThat(account.part(Cause.MEASUREMENT).plus(account.part(Cause.UNEXPLAINED))).isEqualTo(account.more());
      assertThat(account.steps()).allMatch(step -> step.cause().compareTo(Cause.MEASUREMENT) >= 0);
    }
  }

  /** A check of the plan written with the ends and the length that were found gives the same. */
  @Property(tries = 300, seed = "20261129")
  void endsAndLengthPutInAreThoseOfThePlanWrittenSo(@ForAll long seed) {
    Random random = new Random(seed);
    Plan reckoned = plan(random);
    Plan plan = PlanVariants.withEnds(reckoned, Yardage.of(reckoned).width().ends());
    int ends = Yardage.of(plan).width().ends() + random.nextInt(40);
    Length length = Yardage.of(plan).warp().total().plus(new Length(random.nextInt(20_000)));
    Plan written = PlanVariants.withWarp(plan, ends, length);
    if (!plan.pieces().isEmpty() || plan.wefts().stream().allMatch(weft -> weft.length().isPresent())) {
      assertThat(Making.of(plan).withEnds(ends).withLength(length.exactTenths()).needs()).isEqualTo(Yardage.of(written).needs());
    }
  }

  /** In numbers of floating point, from the formulas: threads × strands × length, and picks × width in the reed × take-up, to a millimetre a yarn. */
  @Property(tries = 300, seed = "20261130")
  void whatEverythingComesToIsWhatTheFormulasSay(@ForAll long seed) {
    Random random = new Random(seed);
    Plan plan = simple(random);
    int ends = Yardage.of(plan).width().ends() + random.nextInt(30);
    long picks = 100L + random.nextInt(4000);
    Length length = new Length(20_000 + random.nextInt(80_000));
    Length reed = new Length(2_000 + random.nextInt(8_000));
    int broken = random.nextInt(9);
    WarpAsWound warp = new WarpAsWound(Optional.of(length), OptionalInt.of(ends), OptionalInt.of(broken), Optional.of(new Length(700)), Optional.of(new Length(900)), Optional.of(reed));
    ClothAsWoven cloth = new ClothAsWoven(Optional.empty(), Optional.of(new Length(11_000)), Optional.of(new Length(10_000)), Optional.empty(), Optional.empty(), Optional.empty(), OptionalLong.of(picks), OptionalInt.empty());
    Reckoning reckoning = Reckoning.of(new Made(plan, new Actuals(Optional.empty(), List.of(), List.of(), List.of(), warp, cloth, Map.of(), "", ""), List.of()));
    double inWarp = (ends + broken) * (double) length.tenthsOfMillimetre() * (1 + plan.allowances().winding().fraction().doubleValue());
    double inWeft = picks * (double) reed.tenthsOfMillimetre() * plan.allowances().weftTakeUp().yarnPerCloth().doubleValue();
    assertThat((double) explained(reckoning.yarns().getFirst())).isCloseTo(inWarp, within(10.0));
    assertThat((double) explained(reckoning.yarns().getLast())).isCloseTo(inWeft, within(10.0));
  }

  private static long explained(YarnAccount account) {
    return account.used().minus(account.part(Cause.MEASUREMENT)).minus(account.part(Cause.UNEXPLAINED)).tenthsOfMillimetre();
  }

  /** One yarn in the warp, another in the weft. */
  private static Plan simple(Random random) {
    Piece piece = new Piece("piece", 1 + random.nextInt(4), new Length(5_000 + random.nextInt(9_000)), new Length(3_000 + random.nextInt(4_000)), Length.ZERO, Length.ZERO);
    OrderEntry all = new OrderEntry(YARNS.get(0), new OrderEntry.Share(BigFraction.ONE), 1);
    Warp warp = new Warp(Sett.perCentimetre(4 + random.nextInt(12)), OptionalInt.empty(), Optional.empty(), 1, 0, List.of(all));
    Weft weft = new Weft(YARNS.get(2), Sett.perCentimetre(4 + random.nextInt(12)), BigFraction.ONE, 1, BigFraction.ONE, Optional.empty());
    return new Plan("Any", List.of(piece), warp, List.of(weft), allowances(random), 1);
  }

  private static Plan plan(Random random) {
    boolean pieces = random.nextInt(4) > 0;
    OptionalInt ends = pieces && random.nextBoolean() ? OptionalInt.empty() : OptionalInt.of(60 + random.nextInt(300));
    Optional<Length> length = pieces && random.nextInt(3) > 0 ? Optional.empty() : Optional.of(new Length(30_000 + random.nextInt(60_000)));
    int selvedge = random.nextInt(3) * 4;
    Warp warp = new Warp(Sett.perCentimetre(4 + random.nextInt(12)), ends, length, 1 + random.nextInt(4), selvedge, order(random));
    return new Plan("Any", pieces ? pieces(random) : List.of(), warp, wefts(random, pieces), allowances(random), 1 + random.nextInt(3));
  }

  private static List<OrderEntry> order(Random random) {
    int groups = 1 + random.nextInt(3);
    List<OrderEntry> order = new ArrayList<>();
    for (int i = 0; i < groups; i++) {
      order.add(new OrderEntry(YARNS.get(i), "group " + i, new OrderEntry.Share(BigFraction.of(1, groups)), 1 + random.nextInt(2), random.nextInt(4) == 0, random.nextInt(2)));
    }
    return order;
  }

  private static List<Piece> pieces(Random random) {
    List<Piece> pieces = new ArrayList<>();
    for (int i = 0; i <= random.nextInt(2); i++) {
      Length hems = new Length(random.nextInt(2) * 500L);
      pieces.add(new Piece("piece " + i, 1 + random.nextInt(4), new Length(3_000 + random.nextInt(9_000)), new Length(2_000 + random.nextInt(5_000)), hems, new Length(random.nextInt(2) * 700L)));
    }
    return pieces;
  }

  private static List<Weft> wefts(Random random, boolean pieces) {
    Sett picks = Sett.perCentimetre(4 + random.nextInt(12));
    Optional<Length> length = pieces || random.nextBoolean() ? Optional.empty() : Optional.of(new Length(9_000 + random.nextInt(9_000)));
    List<Weft> wefts = new ArrayList<>(List.of(weft(1, picks, "1/2", length), weft(2, picks, "1/2", length)));
    if (random.nextBoolean()) {
      wefts.add(new Weft(YARNS.get(3), Sett.perCentimetre(2), BigFraction.ONE, 2, BigFraction.of(1, 3), length));
    }
    return wefts;
  }

  private static Weft weft(int yarn, Sett picks, String share, Optional<Length> length) {
    return new Weft(YARNS.get(yarn), picks, BigFraction.parse(share), 1, BigFraction.ONE, length);
  }

  private static Allowances allowances(Random random) {
    Length gap = new Length(random.nextInt(2) * 300L);
    return new Allowances(
        Percentage.parse(random.nextInt(20) + (random.nextBoolean() ? " % of yarn" : " %")), percent(random, 12), percent(random, 12), percent(random, 20), percent(random, 20),
        new Length(random.nextInt(4_000)), new Length(random.nextInt(9_000)), gap, percent(random, 4), random.nextInt(2) * 6, Length.ZERO);
  }

  private static Percentage percent(Random random, int below) {
    return Percentage.parse(random.nextInt(below) + " %");
  }

  private static List<YarnUsed> used(Random random) {
    List<YarnUsed> used = new ArrayList<>();
    for (YarnColour yarn : YARNS) {
      if (random.nextInt(5) > 0) {
        Length thrums = new Length((long) random.nextInt(2) * random.nextInt(900_000));
        used.add(new YarnUsed(yarn, "", Optional.empty(), new Length(random.nextInt(20_000_000)), thrums, Length.ZERO, new Length(random.nextInt(200_000))));
      }
    }
    return used;
  }

  private static List<YarnUsed> withoutThrums(List<YarnUsed> used) {
    return used.stream().map(yarn -> new YarnUsed(yarn.yarn(), yarn.fibre(), yarn.grist(), yarn.used(), Length.ZERO, Length.ZERO, yarn.uncertainty())).toList();
  }

  private static Actuals actuals(Random random) {
    WarpAsWound warp =
        new WarpAsWound(
            length(random, 20_000, 80_000), random.nextBoolean() ? OptionalInt.empty() : OptionalInt.of(20 + random.nextInt(500)),
            random.nextBoolean() ? OptionalInt.empty() : OptionalInt.of(random.nextInt(12)), length(random, 0, 9_000), length(random, 0, 5_000), length(random, 1_000, 9_000));
    ClothAsWoven cloth =
        new ClothAsWoven(
            length(random, 9_000, 60_000), length(random, 9_000, 60_000), length(random, 9_000, 60_000), length(random, 1_000, 9_000), length(random, 1_000, 9_000),
            length(random, 1_000, 9_000), random.nextBoolean() ? OptionalLong.empty() : OptionalLong.of(1 + random.nextInt(9_000)),
            random.nextBoolean() ? OptionalInt.empty() : OptionalInt.of(random.nextInt(9)));
    return new Actuals(Optional.empty(), List.of(), List.of(), List.of(), warp, cloth, Map.of(), "", "");
  }

  private static Optional<Length> length(Random random, int least, int most) {
    return random.nextBoolean() ? Optional.empty() : Optional.of(new Length(least + random.nextInt(most - least)));
  }

  /** Each measure as the plan has it, to the tenth of a millimetre. */
  private static Actuals asPlanned(Plan plan) {
    Making making = Making.of(plan);
    Allowances allowances = plan.allowances();
    Length offLoom = Length.ofTenths(making.cloth(), RoundingMode.HALF_UP);
    Length finished = Length.ofTenths(making.cloth().multiply(allowances.lengthShrinkage().remaining()), RoundingMode.HALF_UP);
    int named = plan.warp().order().stream().mapToInt(OrderEntry::repairEnds).sum();
    // What a warp given outright has over or under for its pieces is found in the loom waste, so only a reckoned one can be all as planned.
    Optional<Length> wound = plan.warp().length().isPresent() ? Optional.empty() : Optional.of(Yardage.of(plan).warp().total());
    WarpAsWound warp =
        new WarpAsWound(
            wound, OptionalInt.of(making.ends()), OptionalInt.of(Math.max(allowances.repairEnds(), named)), wound.map(_ -> allowances.loomWaste()), Optional.of(allowances.sampling()),
            Optional.of(Length.ofTenths(making.inReed(), RoundingMode.HALF_UP)));
    Length inReed = Length.ofTenths(making.inReed(), RoundingMode.HALF_UP);
    ClothAsWoven cloth =
        new ClothAsWoven(
            Optional.empty(), Optional.of(offLoom), Optional.of(finished), Optional.of(inReed), Optional.empty(), Optional.of(inReed), OptionalLong.of(Math.max(1, making.picks())),
            OptionalInt.of(plan.pieces().stream().mapToInt(Piece::count).sum()));
    return new Actuals(Optional.empty(), List.of(), List.of(), List.of(), warp, cloth, Map.of(), "", "");
  }
}
