package hankbook.desktop;

import hankbook.cost.CostLine;
import hankbook.cost.Labour;
import hankbook.cost.PlanCost;
import hankbook.cost.PlanSpent;
import hankbook.cost.Remnant;
import hankbook.desktop.say.Say;
import hankbook.ledger.Place;
import hankbook.measure.DurationText;
import hankbook.studio.CostedPlan;
import java.util.List;
import java.util.stream.Collectors;
import javafx.scene.control.Label;
import javafx.scene.layout.VBox;
import org.joda.money.Money;

/** What stands beside the cost of a plan and is not in its total. */
final class CostNotes extends VBox {
  private final CostedPlan costed;
  private final PlanCost cost;

  CostNotes(CostedPlan costed) {
    this.costed = costed;
    this.cost = costed.cost();
    getStyleClass().add("plan-column");
    notCounted();
    hours();
    spendNow();
    remnants();
    costed.spent().ifPresent(this::spent);
  }

  private void notCounted() {
    if (!cost.uncounted().isEmpty()) {
      VBox list = list("cost-not-counted");
      cost.uncounted().forEach(left -> list.getChildren().add(PlanPage.text("• " + Wording.phrase(left.phrase()) + ".", "plan-warning")));
      if (costed.yarnsToPrice().stream().anyMatch(yarn -> yarn.unknown())) {
        list.getChildren().add(Labels.quiet(Say.text("Enter what was paid under Costs, Purchases; or try a price under What if.")));
      }
      PlanPage.section(this, Say.text("Not in the total"), list);
    }
  }

  /** Work that has a rate says its hours in the table of costs. */
  private void hours() {
    List<Labour> work = cost.work().stream().filter(labour -> !labour.time().isZero() && labour.hourly().isEmpty()).toList();
    if (!work.isEmpty()) {
      FactList facts = new FactList();
      facts.setId("cost-hours");
      work.forEach(labour -> facts.add(CostWords.heading(labour) + ", " + CostWords.times(labour), DurationText.rounded(labour.time())));
      String from = work.stream().map(labour -> Wording.phrase(labour.unit().from())).distinct().collect(Collectors.joining("; "));
      VBox list = list("cost-work");
      list.getChildren().addAll(facts, Labels.quiet(Say.text("Times: {0}. Say under Settings what an hour costs, or try a rate under What if.", from)));
      PlanPage.section(this, Say.text("Work without a rate"), list);
    }
  }

  private void spendNow() {
    if (!cost.purchases().isEmpty()) {
      VBox list = list("cost-spend-now");
      list.getChildren().add(sum(Wording.money(cost.spendNow()), Say.text("The shelf does not cover this plan. The total has only the part of this that the plan uses.")));
      cost.purchases().forEach(purchase -> list.getChildren().add(Labels.quiet(CostWords.purchase(purchase))));
      PlanPage.section(this, Say.text("To be spent now, on whole put-ups"), list);
    }
  }

  private static VBox sum(String amount, String words) {
    Label sum = new Label(amount);
    sum.getStyleClass().add("cost-sum");
    return new VBox(sum, Labels.quiet(words));
  }

  private void remnants() {
    if (!cost.remnants().isEmpty()) {
      FactList facts = new FactList();
      facts.setId("cost-remnants");
      for (Remnant remnant : cost.remnants()) {
        facts.add(CostWords.remnant(remnant), remnant.worth().map(Wording::money).orElseGet(() -> Say.text("worth not known")));
      }
      PlanPage.section(this, Say.text("Left over, and in none of these costs"), facts);
    }
  }

  private void spent(PlanSpent spent) {
    FactList facts = new FactList();
    facts.setId("cost-spent");
    spent.places().forEach((place, worth) -> facts.add(CostWords.place(place) + ", " + Wording.yarn(worth.length()), Wording.money(worth.cost())));
    facts.add(Say.text("In all"), Wording.money(spent.total()));
    Money yarn = cost.total().part("yarn").map(CostLine::amount).orElse(Money.zero(cost.currency()));
    facts.add(Say.text("The yarn as it is costed above"), Wording.money(yarn));
    VBox list = list("cost-so-far");
    list.getChildren().add(facts);
    if (spent.places().containsKey(Place.Kind.CLOTH)) {
      list.getChildren().add(Labels.quiet(Say.text("Some of it is cloth: above stands what weaving all of it once more would cost, from what is on the shelf now.")));
    }
    if (!spent.unknown().isEmpty()) {
      list.getChildren().add(Labels.quiet(Say.text("Not in this, since what was paid is not known: {0}.", String.join(", ", spent.unknown()))));
    }
    PlanPage.section(this, Say.text("What its yarn has cost so far"), list);
  }

  private static VBox list(String id) {
    VBox list = new VBox();
    list.setId(id);
    list.getStyleClass().add("cost-list");
    return list;
  }
}
