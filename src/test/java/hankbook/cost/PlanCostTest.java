package hankbook.cost;

import static hankbook.cost.Mats.amount;
import static hankbook.cost.Mats.money;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import hankbook.allot.Judgement;
import hankbook.allot.PutUp;
import hankbook.allot.Setting;
import hankbook.measure.Length;
import hankbook.measure.Percentage;
import hankbook.measure.Phrase;
import hankbook.measure.Unreadable;
import hankbook.plan.Piece;
import hankbook.plan.WorkKind;
import hankbook.yarn.Skein;
import java.time.Duration;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Plans costed by hand: the arithmetic stands beside each figure. */
class PlanCostTest {
  private static final List<Skein> ENOUGH = List.of(Mats.skein("A", Mats.WARP, "250 m"), Mats.skein("B", Mats.WEFT, "300 m"));
  private static final Map<String, List<Worth>> PAID = Mats.worths("A 250 m 25.00 EUR", "B 300 m 10.00 EUR");

  @Test
  void yarnCostsWhatWasPaidForTheMetresThatAreTakenByWhatBecomesOfThem() {
    PlanCost cost = Mats.cost(Mats.plan(), ENOUGH, PAID, Judgement.DEFAULT, Map.of());
    // Warp: 200 of 250 m for 25.00 are 20.00; of each end of 2 m the cloth has 1.5, the sampling 0.2 and the loom waste 0.3.
    assertThat(amount(cost, "yarn", "warp", "Tarn, Slate", "A")).isEqualTo("15.00 EUR");
    assertThat(amount(cost, "yarn", "loomWaste", "Tarn, Slate", "A")).isEqualTo("3.00 EUR");
    assertThat(amount(cost, "yarn", "sampling", "Tarn, Slate", "A")).isEqualTo("2.00 EUR");
    // Weft: 170 of 300 m for 10.00 are 5.666, so 5.67; of 1.7 m woven the sampling has 0.2: 567 x 0.2/1.7 = 66.7 and 567 x 1.5/1.7 = 500.3 cents.
    assertThat(amount(cost, "yarn", "weft", "Beck, Milk", "B")).isEqualTo("5.00 EUR");
    assertThat(amount(cost, "yarn", "sampling", "Beck, Milk", "B")).isEqualTo("0.67 EUR");
    assertThat(amount(cost, "yarn")).isEqualTo("25.67 EUR");
    assertThat(Mats.line(cost, "yarn").length()).contains(Length.metres(370));
    assertThat(cost.total().amount()).isEqualTo(money("25.67 EUR"));
    assertThat(cost.spendNow()).isEqualTo(money("0 EUR"));
  }

  @Test
  void whatIsLeftOverIsNamedWithItsWorthAndIsInNoSum() {
    PlanCost cost = Mats.cost(Mats.plan(), ENOUGH, PAID, Judgement.DEFAULT, Map.of());
    // 25.00 - 20.00 for 50 m; 10.00 - 5.67 for 130 m.
    assertThat(cost.remnants()).containsExactlyInAnyOrder(
        new Remnant("A", Mats.WARP, Length.metres(50), Optional.of(money("5.00 EUR")), true), new Remnant("B", Mats.WEFT, Length.metres(130), Optional.of(money("4.33 EUR")), true));
    List<Skein> barely = List.of(Mats.skein("A", Mats.WARP, "204 m"), Mats.skein("B", Mats.WEFT, "170 m"));
    PlanCost bare = Mats.cost(Mats.plan(), barely, Mats.worths("A 204 m 20.40 EUR", "B 170 m 5.00 EUR"), Judgement.DEFAULT, Map.of());
    assertThat(bare.remnants()).containsExactly(new Remnant("A", Mats.WARP, Length.metres(4), Optional.of(money("0.40 EUR")), false));
  }

  @Test
  void repairEndsAndWhatIsLostInWindingAreLinesOfTheirOwn() {
    List<Skein> stock = List.of(Mats.skein("A", Mats.WARP, "300 m"), Mats.skein("B", Mats.WEFT, "300 m"));
    PlanCost cost = Mats.cost(Mats.plan(Percentage.parse("25 %"), 5), stock, Mats.worths("A 300 m 30.00 EUR", "B 300 m 10.00 EUR"), Judgement.DEFAULT, Map.of());
    // 105 ends of 2 m and a quarter more are 262.5 m, 26.25. A fifth of it is lost in winding, 52.5 m; of the other 210 m 5 of 105 ends mend, 10 m; 200 m are the warp.
    assertThat(amount(cost, "yarn", "winding")).isEqualTo("5.25 EUR");
    assertThat(amount(cost, "yarn", "repairs")).isEqualTo("1.00 EUR");
    assertThat(amount(cost, "yarn", "warp")).isEqualTo("15.00 EUR");
    assertThat(amount(cost, "yarn", "loomWaste")).isEqualTo("3.00 EUR");
    assertThat(amount(cost, "yarn", "sampling", "Tarn, Slate")).isEqualTo("2.00 EUR");
  }

  @Test
  void workIsCountedByEndPickAndPieceAndItsCentsAreSharedByLargestRemainder() {
    Judgement judgement = Judgement.DEFAULT.with(Setting.HOURLY_RATE, "12 EUR");
    PlanCost cost = Mats.cost(Mats.plan(), ENOUGH, PAID, judgement, Map.of());
    // At a third of a cent the second: 100 ends x 30 s = 1000; x 10 s = 333.3; 850 picks x 4 s = 1133.3; 3 pieces x 900 s = 900. In all 4700 cents exactly;
    // rounded down they make 4699, and the cent goes to the first of those with a third over.
    assertThat(List.of(
            amount(cost, "work", "winding"), amount(cost, "work", "beaming"), amount(cost, "work", "threading"), amount(cost, "work", "sleying"),
            amount(cost, "work", "weaving"), amount(cost, "work", "finishing"), amount(cost, "work")))
        .containsExactly("10.00 EUR", "3.34 EUR", "10.00 EUR", "3.33 EUR", "11.33 EUR", "9.00 EUR", "47.00 EUR");
    assertThat(Mats.line(cost, "work", "weaving").basis()).isEqualTo("850 picks, 4 s each (common practice), 56 min 40 s at 12.00 EUR an hour");
    assertThat(cost.uncounted()).isEmpty();
  }

  @Test
  void overheadsComeOnYarnAndWorkAndOnThePlan() {
    Judgement judgement = Judgement.DEFAULT.with(Setting.HOURLY_RATE, "12 EUR").with(Setting.OVERHEAD, "10 %").with(Setting.PLAN_OVERHEAD, "2.50 EUR");
    PlanCost cost = Mats.cost(Mats.plan(), ENOUGH, PAID, judgement, Map.of());
    // 10 % of 25.67 + 47.00 = 72.67 are 7.267.
    assertThat(amount(cost, "overheads", "percentage")).isEqualTo("7.27 EUR");
    assertThat(amount(cost, "overheads", "perPlan")).isEqualTo("2.50 EUR");
    assertThat(cost.total().amount()).isEqualTo(money("82.44 EUR"));
    // 82.44 / 3.
    assertThat(cost.pieces()).containsExactly(new PieceCost("mat", 3, money("82.44 EUR")));
    assertThat(cost.pieces().getFirst().words()).isEqualTo("27.48 EUR");
    // 82.44 / 0.6 and 82.44 x 1.4 = 115.416.
    assertThat(cost.price(new Pricing.Margin(Percentage.parse("40 %"))).all()).isEqualTo(money("137.40 EUR"));
    assertThat(cost.price(new Pricing.Markup(Percentage.parse("40 %"))).all()).isEqualTo(money("115.42 EUR"));
    // 11542 cents are 3 x 3847 and 1.
    assertThat(cost.price(new Pricing.Markup(Percentage.parse("40 %"))).pieces().getFirst().words()).isEqualTo("38.47 EUR, 1 of them 38.48 EUR");
  }

  @Test
  void aKindOfWorkMayHaveItsOwnRateAndTimesOfEarlierPlansStandWhereNoneIsSet() {
    Judgement judgement = Judgement.DEFAULT.with(Setting.WEAVING_RATE, "36 EUR").with(Setting.BEAMING_TIME, "20 s").with(Setting.THREADING_TIME, "30 s");
    Map<WorkKind, UnitTime> learnt = Map.of(
        WorkKind.THREADING, new UnitTime(Duration.ofSeconds(9), Phrase.of("from 5 plans")),
        WorkKind.WEAVING, new UnitTime(Duration.ofSeconds(2), Phrase.of("from 5 plans")), WorkKind.BEAMING, new UnitTime(Duration.ofSeconds(1), Phrase.of("from 5 plans")));
    Rates rates = Rates.of(judgement, learnt);
    assertThat(rates.times().get(WorkKind.WEAVING)).isEqualTo(new UnitTime(Duration.ofSeconds(2), Phrase.of("from 5 plans")));
    assertThat(rates.times().get(WorkKind.BEAMING)).isEqualTo(new UnitTime(Duration.ofSeconds(20), Phrase.of("as set")));
    assertThat(rates.times().get(WorkKind.THREADING)).as("the default, but set").isEqualTo(new UnitTime(Duration.ofSeconds(30), Phrase.of("as set")));
    assertThat(rates.times()).extractingByKey(WorkKind.SLEYING).extracting(unit -> unit.from().english()).isEqualTo("common practice");
    assertThat(rates.hourly()).isEqualTo(Map.of(WorkKind.WEAVING, money("36 EUR")));
    PlanCost cost = Mats.cost(Mats.plan(), ENOUGH, PAID, judgement, Map.of());
    // 850 picks x 4 s are 3400 s, at a cent the second.
    assertThat(amount(cost, "work", "weaving")).isEqualTo("34.00 EUR");
    assertThat(cost.uncounted()).extracting(Uncounted::toString)
        .contains("Winding, 100 ends, 30 s each (common practice), 50 min: no hourly rate is set for it").hasSize(5);
  }

  @Test
  void withoutARateTheHoursAreThereAndTheirCostIsSaidNotToBe() {
    PlanCost cost = Mats.cost(Mats.plan(), ENOUGH, PAID, Judgement.DEFAULT, Map.of());
    // 3000 + 1000 + 3000 + 1000 + 3400 + 2700 = 14100 s.
    assertThat(cost.uncounted()).extracting(Uncounted::toString).containsExactly("Work of 3 h 55 min: no hourly rate is set");
    assertThat(cost.work()).hasSize(6);
    assertThat(cost.total().part("work")).isEmpty();
  }

  @Test
  void aSkeinOfUnknownCostIsNamedAndNotCountedAsNothing() {
    PlanCost cost = Mats.cost(Mats.plan(), ENOUGH, Mats.worths("B 300 m 10.00 EUR"), Judgement.DEFAULT, Map.of());
    assertThat(cost.uncounted()).extracting(Uncounted::toString).contains("A, 200 m of Tarn Slate: what was paid for it is not known");
    assertThat(amount(cost, "yarn")).isEqualTo("5.67 EUR");
    assertThat(Mats.line(cost, "yarn").part("warp")).isEmpty();
    assertThat(cost.remnants()).contains(new Remnant("A", Mats.WARP, Length.metres(50), Optional.empty(), true));
    PlanCost foreign = Mats.cost(Mats.plan(), ENOUGH, Mats.worths("A 250 m 25.00 USD", "B 300 m 10.00 EUR"), Judgement.DEFAULT, Map.of());
    assertThat(foreign.uncounted()).extracting(Uncounted::toString).contains("A, 200 m of Tarn Slate: it was paid in USD, and this is reckoned in EUR");
  }

  @Test
  void whatLacksCostsItsShareOfThePutUpsAndThoseAreToBeSpentNow() {
    List<Skein> stock = List.of(Mats.skein("A", Mats.WARP, "150 m"), Mats.skein("B", Mats.WEFT, "300 m"));
    Map<String, List<Worth>> paid = Mats.worths("A 150 m 15.00 EUR", "B 300 m 10.00 EUR");
    PlanCost cost = Mats.cost(Mats.plan(), stock, paid, Judgement.DEFAULT, Map.of(Mats.WARP, PutUp.parse("18.00 EUR")));
    // A gives 75 ends, 15.00. The other 25 ends take 50 of the 150 m of one put-up: 6.00, of which 0.75 is cloth, 0.10 sampling, 0.15 loom waste.
    assertThat(amount(cost, "yarn", "toBuy", "Tarn, Slate")).isEqualTo("6.00 EUR");
    assertThat(amount(cost, "yarn", "toBuy", "Tarn, Slate", "warp")).isEqualTo("4.50 EUR");
    assertThat(amount(cost, "yarn", "toBuy", "Tarn, Slate", "sampling")).isEqualTo("0.60 EUR");
    assertThat(amount(cost, "yarn", "toBuy", "Tarn, Slate", "loomWaste")).isEqualTo("0.90 EUR");
    assertThat(amount(cost, "yarn")).isEqualTo("26.67 EUR");
    assertThat(cost.spendNow()).isEqualTo(money("18.00 EUR"));
    assertThat(cost.remnants()).contains(new Remnant("", Mats.WARP, Length.metres(100), Optional.of(money("12.00 EUR")), true));
  }

  @Test
  void aYarnThatIsNotOnTheShelfIsCostedByThePutUpThatIsNamed() {
    List<Skein> stock = List.of(Mats.skein("B", Mats.WEFT, "300 m"));
    Map<String, List<Worth>> paid = Mats.worths("B 300 m 10.00 EUR");
    PlanCost unnamed = Mats.cost(Mats.plan(), stock, paid, Judgement.DEFAULT, Map.of());
    assertThat(unnamed.uncounted()).extracting(Uncounted::toString).contains("Tarn Slate, 200 m still to buy: nothing shows how it is put up");
    PlanCost unpriced = Mats.cost(Mats.plan(), List.of(stock.getFirst(), Mats.skein("A", Mats.WARP, "100 m")), paid, Judgement.DEFAULT, Map.of());
    assertThat(unpriced.uncounted()).extracting(Uncounted::toString).contains("Tarn Slate, 100 m still to buy: no price of it is known");
    PlanCost named = Mats.cost(Mats.plan(), stock, paid, Judgement.DEFAULT, Map.of(Mats.WARP, PutUp.parse("9.00 EUR / 90 m")));
    // 90 m give 45 ends: three put-ups for 100. 200 of their 270 m, for 27.00, are 20.00.
    assertThat(amount(named, "yarn", "toBuy")).isEqualTo("20.00 EUR");
    assertThat(named.spendNow()).isEqualTo(money("27.00 EUR"));
    PlanCost foreign = Mats.cost(Mats.plan(), stock, paid, Judgement.DEFAULT, Map.of(Mats.WARP, PutUp.parse("9.00 USD / 90 m")));
    assertThat(foreign.uncounted()).extracting(Uncounted::toString).contains("Tarn Slate, 200 m still to buy: its price is in USD, and this is reckoned in EUR");
    assertThat(foreign.spendNow()).isEqualTo(money("0 EUR"));
  }

  @Test
  void severalKindsOfPiecesShareTheCostByTheAreaThatIsWovenForThem() {
    List<Piece> pieces = List.of(
        new Piece("napkin", 2, Mats.cm(38), Mats.cm(40), Mats.cm(2), Length.ZERO), new Piece("runner", 1, Mats.cm(120), Mats.cm(40), Length.ZERO, Mats.cm(20)));
    // 2 x 40 x 40 = 3200 and 120 x 40 = 4800 of 8000 square centimetres: 400.4 and 600.6 of 1001 cents. Fringes are not woven.
    assertThat(PieceCost.shared(money("10.01 EUR"), pieces)).containsExactly(new PieceCost("napkin", 2, money("4.00 EUR")), new PieceCost("runner", 1, money("6.01 EUR")));
    assertThat(PieceCost.shared(money("10.01 EUR"), List.of())).isEmpty();
  }

  @Test
  void whatIsTakenFirstIsCostedFirst() {
    // On the loom 100 m for 5.00, on the shelf 150 m for 20.00: the 200 m take all of the one and 100 of the 150 m of the other, 13.33.
    Map<String, List<Worth>> held = new HashMap<>(PAID);
    held.put("A", List.of(new Worth(Length.metres(100), money("5.00 EUR")), new Worth(Length.metres(150), money("20.00 EUR"))));
    PlanCost cost = Mats.cost(Mats.plan(), ENOUGH, held, Judgement.DEFAULT, Map.of());
    assertThat(amount(cost, "yarn")).isEqualTo("24.00 EUR");
    assertThat(cost.remnants()).contains(new Remnant("A", Mats.WARP, Length.metres(50), Optional.of(money("6.67 EUR")), true));
  }

  @Test
  void twoCostsAreLaidBesideEachOtherLineByLine() {
    PlanCost now = Mats.cost(Mats.plan(), ENOUGH, PAID, Judgement.DEFAULT, Map.of());
    PlanCost then = Mats.cost(Mats.plan(Percentage.parse("10 %"), 0), ENOUGH, PAID, Judgement.DEFAULT.with(Setting.HOURLY_RATE, "12 EUR"), Map.of());
    Comparison beside = Comparison.of(now, then);
    // A tenth more of 20.00 is lost in winding, and the work of 47.00 is costed.
    assertThat(beside.difference()).isEqualTo(money("49.00 EUR"));
    assertThat(beside.parts()).extracting(Comparison::name).containsExactly("Yarn", "Work");
    assertThat(beside.parts().getLast().now()).isEmpty();
    assertThat(beside.parts().getFirst().parts()).extracting(Comparison::key).contains("warp", "weft", "sampling", "loomWaste", "winding");
    assertThat(beside.parts().getFirst().difference()).isEqualTo(money("2.00 EUR"));
  }

  @Test
  void aMarginOfAllOfThePriceAndPercentagesOfSomethingElseAreRefused() {
    assertThatThrownBy(() -> new Pricing.Margin(Percentage.parse("100 %"))).isInstanceOf(Unreadable.class).hasMessageContaining("a margin of the price under 100 %");
    assertThatThrownBy(() -> new Pricing.Markup(Percentage.parse("8 % of cloth"))).isInstanceOf(Unreadable.class).hasMessageContaining("a percentage such as 40 %");
  }
}
