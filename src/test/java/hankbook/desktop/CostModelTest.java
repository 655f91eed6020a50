package hankbook.desktop;

import static org.assertj.core.api.Assertions.assertThat;

import hankbook.allot.Setting;
import hankbook.cost.PlanCost;
import hankbook.cost.Price;
import hankbook.exchange.PlanField;
import hankbook.exchange.PlanPart;
import hankbook.ledger.Place;
import hankbook.measure.MoneyText;
import hankbook.store.LedgerAddress;
import hankbook.studio.CostedPlan;
import hankbook.studio.Draw;
import hankbook.studio.Plans;
import hankbook.studio.Reserve;
import hankbook.studio.SampleStudio;
import hankbook.studio.Settings;
import hankbook.studio.Studio;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.Proxy;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.UUID;
import org.joda.money.Money;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What a plan of the sample studio costs, as it is shown beside it. */
class CostModelTest {
  private final List<String> asked = new ArrayList<>();
  @TempDir private Path folder;
  private Studio studio;
  private PlansModel model;
  private CostModel cost;

  @BeforeEach
  void open() throws Exception {
    studio = Studio.open(new LedgerAddress.InFile(folder.resolve("ledger")), "Ida");
    SampleStudio.fill(studio);
    model = new PlansModel(counting(), new Work(Runnable::run, Runnable::run), () -> {});
    cost = model.cost();
  }

  @AfterEach
  void close() {
    studio.close();
  }

  /** A desk that writes down what it is asked. */
  private PlanDesk counting() {
    PlanDesk desk = new StudioPlanDesk(studio);
    return (PlanDesk) Proxy.newProxyInstance(getClass().getClassLoader(), new Class<?>[] {PlanDesk.class}, (_, method, given) -> {
      asked.add(method.getName());
      try {
        return method.invoke(desk, given);
      } catch (InvocationTargetException refused) {
        throw refused.getCause();
      }
    });
  }

  private void look(String plan) {
    model.refresh();
    model.choose(plan);
    cost.watch(true);
  }

  private PlanCost asSet() {
    return cost.asSet().foundProperty().get().map(CostedPlan::cost).orElseThrow();
  }

  private PlanCost otherwise() {
    return cost.otherwise().foundProperty().get().map(CostedPlan::cost).orElseThrow();
  }

  private Price price() {
    return cost.priceProperty().get().orElseThrow();
  }

  private static Money euro(String amount) {
    return MoneyText.parse(amount + " EUR");
  }

  @Test
  void aPlanIsCostedOnlyWhileSomeoneLooks() {
    model.refresh();
    model.choose("Quay towels");
    assertThat(asked).doesNotContain("cost");
    cost.watch(true);
    // 1600 m of S001 and S002 each for 19.80 EUR, 803.1177 of the 1600 m of S003 for 9.94 EUR.
    assertThat(asSet().total().amount()).isEqualTo(euro("49.54"));
    assertThat(asSet().uncounted()).extracting(Object::toString).anyMatch(left -> left.startsWith("S005"));
  }

  /** Of 49.54 EUR: divided by 0.6 it is 82.57 EUR, times 1.4 it is 69.36 EUR. */
  @Test
  void aMarginIsAPartOfThePriceAndAMarkupAPartOfTheCost() {
    look("Quay towels");
    assertThat(cost.priceProperty().get()).isEmpty();
    cost.part().textProperty().set("40");
    assertThat(price().all()).isEqualTo(euro("82.57"));
    assertThat(CostWords.each(price().pieces())).isEqualTo("Each towel 20.64 EUR, 1 of them 20.65 EUR");
    cost.wayProperty().set(PriceWay.MARKUP);
    assertThat(price().all()).isEqualTo(euro("69.36"));
    cost.part().textProperty().set("120 %");
    assertThat(cost.part().isBad()).isFalse();
    cost.wayProperty().set(PriceWay.MARGIN);
    assertThat(cost.part().messageProperty().get()).isEqualTo("Wanted: a margin of the price under 100 %.");
    assertThat(cost.priceProperty().get()).isEmpty();
  }

  /** 556 ends at 80 s, 3303 picks at 4 s and 4 pieces at 15 min are 17 h 1 min 32 s: at 18 EUR an hour 306.46 EUR. */
  @Test
  void anotherRateIsTriedBesideWhatIsSetAndTheLedgerIsNotReadAgain() {
    look("Quay towels");
    asked.clear();
    cost.trial().rate().textProperty().set("18");
    assertThat(otherwise().total().amount()).isEqualTo(euro("356.00"));
    assertThat(asSet().total().amount()).isEqualTo(euro("49.54"));
    assertThat(asked).isEmpty();
    cost.trial().rate().textProperty().set("18 USD");
    assertThat(cost.trial().rate().messageProperty().get()).isEqualTo("Wanted: an amount in EUR.");
    assertThat(cost.otherwise().foundProperty().get()).isEmpty();
    cost.trial().clear();
    assertThat(cost.trial().isNothing()).isTrue();
  }

  @Test
  void aYarnOfUnknownCostIsPricedByThePutUpThatTheShelfShows() {
    look("Quay towels");
    List<CostTrial.YarnPrice> prices = cost.trial().pricesProperty().get();
    assertThat(prices).singleElement().satisfies(price -> assertThat(price.yarn().yarn()).hasToString("Skerry 16/2 Woad"));
    prices.getFirst().price().textProperty().set("21.40");
    // 518.37 of 1600 m for 21.40 EUR, by way of what all 731.53 m of S005 would have cost.
    assertThat(otherwise().total().amount().minus(asSet().total().amount())).isEqualTo(euro("6.93"));
    assertThat(cost.trial().pricesProperty().get()).isSameAs(prices);
    prices.getFirst().price().textProperty().set("21.40 / 800 m");
    assertThat(otherwise().total().amount().minus(asSet().total().amount())).isGreaterThan(euro("13.80"));
  }

  @Test
  void aShortPlanIsCostedWithWhatIsToBuyAtThePriceThatIsTried() {
    look("Gorse shawl");
    assertThat(asSet().spendNow()).isEqualTo(euro("100.00"));
    CostTrial.YarnPrice gold = cost.trial().pricesProperty().get().stream().filter(price -> price.yarn().yarn().toString().equals("Gorse Gold")).findFirst().orElseThrow();
    gold.price().textProperty().set("21");
    assertThat(otherwise().spendNow()).isEqualTo(euro("108.00"));
  }

  @Test
  void morePiecesAreTriedAndThePlanStaysAsItIs() {
    look("Quay towels");
    String kept = new Plans(studio).text("Quay towels").orElseThrow();
    cost.trial().pieces().textProperty().set("2");
    assertThat(otherwise().total().amount()).isLessThan(asSet().total().amount());
    assertThat(otherwise().pieces().getFirst().count()).isEqualTo(2);
    cost.trial().pieces().textProperty().set("0");
    assertThat(cost.trial().isBad()).isTrue();
    assertThat(new Plans(studio).text("Quay towels")).contains(kept);
  }

  @Test
  void anotherPlanIsOpenedWithNothingTriedAndTheSamePart() {
    look("Quay towels");
    cost.part().textProperty().set("40 %");
    cost.trial().rate().textProperty().set("18");
    model.choose("Gorse shawl");
    assertThat(cost.trial().isNothing()).isTrue();
    assertThat(cost.otherwise().foundProperty().get()).isEmpty();
    assertThat(price().pieces().getFirst().name()).isEqualTo("shawl");
  }

  @Test
  void aRateThatIsSetMeanwhileIsCostedOnceThePlansAreLookedAtAgain() throws Exception {
    look("Quay towels");
    new Settings(studio).set(Setting.HOURLY_RATE, "18 EUR");
    model.refresh();
    assertThat(asSet().total().amount()).isEqualTo(euro("356.00"));
  }

  @Test
  void aPlanThatIsNotFinishedSaysSoAndCostsNothing() {
    look("Quay towels");
    model.editor().enter(PlanField.of(PlanPart.WARP, "sett"), "");
    assertThat(cost.unfinishedProperty().get()).startsWith("The plan is costed once it is finished. ");
    assertThat(cost.asSet().foundProperty().get()).isEmpty();
    model.editor().enter(PlanField.of(PlanPart.WARP, "sett"), "10/cm");
    assertThat(cost.unfinishedProperty().get()).isEmpty();
    assertThat(asSet().total().amount()).isEqualTo(euro("49.54"));
  }

  @Test
  void yarnThatIsOnTheLoomIsSaidBesideWhatThePlanCosts() throws Exception {
    new Reserve(studio).plan(UUID.randomUUID(), "Quay towels", new Plans(studio).kept("Quay towels").orElseThrow().version(), false);
    new Draw(studio).plan(UUID.randomUUID(), "Quay towels");
    look("Quay towels");
    assertThat(cost.asSet().foundProperty().get().flatMap(CostedPlan::spent)).hasValueSatisfying(spent -> {
      assertThat(spent.places()).containsOnlyKeys(Place.Kind.LOOM);
      assertThat(spent.total()).isEqualTo(asSet().total().part("yarn").orElseThrow().amount());
    });
  }
}
