package hankbook.desktop;

import hankbook.allot.PlanCheck;
import hankbook.cost.CostWish;
import hankbook.cost.Price;
import hankbook.cost.Pricing;
import hankbook.desktop.say.Say;
import hankbook.exchange.BadInput;
import hankbook.plan.Plan;
import hankbook.studio.CostedPlan;
import java.util.Optional;
import java.util.concurrent.Callable;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;
import javafx.beans.property.SimpleObjectProperty;

/** What the open plan costs as it is set, what it would cost otherwise, and the price that is made of it. The ledger is read only for the first. */
final class CostModel {
  private final PlanDesk desk;
  private final PlanEditor editor;
  private final ObjectProperty<PriceWay> way = new SimpleObjectProperty<>(PriceWay.MARGIN);
  private final TypedValue<Pricing> part = new TypedValue<>(text -> way.get().of(CostTyped.percentage(text)), this::priced);
  private final CostTrial trial = new CostTrial(this::tryAgain);
  private final ReadOnlyStringWrapper unfinished = new ReadOnlyStringWrapper("");
  private final ReadOnlyObjectWrapper<Optional<Price>> price = new ReadOnlyObjectWrapper<>(Optional.empty());
  private final LiveAnswer<CostedPlan> asSet;
  private final LiveAnswer<CostedPlan> otherwise;

  CostModel(PlanDesk desk, Work work, PlanEditor editor) {
    this.desk = desk;
    this.editor = editor;
    this.asSet = new LiveAnswer<>(work, this::question, this::why);
    this.otherwise = new LiveAnswer<>(work, this::whatIf, this::why);
    editor.openedProperty().subscribe(_ -> trial.clear());
    editor.answerProperty().subscribe(_ -> judged());
    asSet.foundProperty().subscribe(found -> {
      found.ifPresent(trial::follow);
      otherwise.ask();
      priced();
    });
    way.subscribe((_, _) -> part.again());
  }

  /** Which way a price is made of the cost. */
  ObjectProperty<PriceWay> wayProperty() {
    return way;
  }

  /** The part by which it is made. */
  TypedValue<Pricing> part() {
    return part;
  }

  /** What is tried. */
  CostTrial trial() {
    return trial;
  }

  /** What the plan costs as it is set, while someone looks at it. */
  LiveAnswer<CostedPlan> asSet() {
    return asSet;
  }

  /** What it costs by what is tried; nothing where nothing is. */
  LiveAnswer<CostedPlan> otherwise() {
    return otherwise;
  }

  /** Why a plan cannot be costed yet, or empty. */
  ReadOnlyStringProperty unfinishedProperty() {
    return unfinished.getReadOnlyProperty();
  }

  /** The price of the plan as it is set; empty where none is asked for. */
  ReadOnlyObjectProperty<Optional<Price>> priceProperty() {
    return price.getReadOnlyProperty();
  }

  /** The price of a plan by the part that is typed. */
  Optional<Price> price(CostedPlan costed) {
    return part.value().map(costed.cost()::price);
  }

  /** Looks from one screen to the other. */
  void watch(boolean now) {
    asSet.watch(now);
    otherwise.watch(now);
  }

  /** Reads the ledger anew, which may know other prices and rates by now. */
  void ask() {
    asSet.ask();
  }

  private void judged() {
    unfinished.set(editor.answerProperty().get() instanceof PlanAnswer.Unfinished still ? Say.text("The plan is costed once it is finished. {0}", still.words()) : "");
    asSet.ask();
  }

  private void tryAgain() {
    otherwise.ask();
  }

  private void priced() {
    price.set(asSet.foundProperty().get().flatMap(this::price));
  }

  private Optional<Callable<CostedPlan>> question() {
    return plan().map(plan -> () -> desk.cost(plan));
  }

  private Optional<Callable<CostedPlan>> whatIf() {
    if (trial.isBad() || trial.isNothing()) {
      return Optional.empty();
    }
    CostWish wish = trial.wish();
    return asSet.foundProperty().get().map(costed -> {
      Plan plan = costed.cost().plan();
      Optional<Plan> instead = trial.instead(plan);
      return () -> costed.instead(plan.name(), instead, wish);
    });
  }

  private Optional<Plan> plan() {
    return editor.answerProperty().get() instanceof PlanAnswer.Reckoned(PlanCheck check) ? Optional.of(check.plan()) : Optional.empty();
  }

  private String why(Exception trouble) {
    return trouble instanceof BadInput refused ? PlanWords.why(refused, plan().map(Plan::name).orElse("")) : PlanWords.trouble(trouble);
  }
}
