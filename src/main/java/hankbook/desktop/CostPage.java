package hankbook.desktop;

import atlantafx.base.theme.Styles;
import hankbook.desktop.say.Say;
import hankbook.desktop.why.Opened;
import hankbook.studio.CostedPlan;
import java.util.List;
import java.util.Optional;
import javafx.css.PseudoClass;
import javafx.scene.control.Label;
import javafx.scene.layout.VBox;

/** What the plan costs, what is made a price of it, and what it would cost otherwise. What is typed in stands above what changes by it. */
final class CostPage extends PlanPage {
  private static final PseudoClass STALE = PseudoClass.getPseudoClass("stale");

  private final CostModel cost;
  private final Label total = new Label();
  private final Label each = Labels.quiet("");
  private final CostTrialBox trial;
  private final Opened opened = new Opened();
  private final VBox table = new VBox();
  private final VBox notes = new VBox();

  CostPage(PlansModel model) {
    super("cost", Say.text("Cost"), model);
    this.cost = model.cost();
    this.trial = new CostTrialBox(cost);
    total.setId("cost-total");
    total.getStyleClass().add(Styles.TITLE_3);
    each.setId("cost-each");
    Label unfinished = Labels.quiet(cost.unfinishedProperty());
    unfinished.setId("cost-unfinished");
    VBox costed = new VBox(new VBox(total, each), new CostPriceBox(cost), trial, table, notes);
    costed.getStyleClass().add("cost-page");
    Labels.showOnly(costed, cost.asSet().foundProperty().map(Optional::isPresent));
    stands(unfinished, Labels.fault(cost.asSet().troubleProperty()), costed);
    visibleProperty().subscribe(cost::watch);
    cost.asSet().foundProperty().subscribe(_ -> showCost());
    cost.otherwise().foundProperty().subscribe(_ -> showTable());
    cost.priceProperty().subscribe(_ -> showTable());
    cost.asSet().reckoningProperty().subscribe(reckoning -> costed.pseudoClassStateChanged(STALE, reckoning));
    cost.otherwise().reckoningProperty().subscribe(reckoning -> table.pseudoClassStateChanged(STALE, reckoning));
  }

  private void showCost() {
    showTable();
    notes.getChildren().clear();
    cost.asSet().foundProperty().get().ifPresent(found -> {
      total.setText(Wording.money(found.cost().total().amount()));
      each.setText(each(found));
      trial.follow(found.answer().check());
      notes.getChildren().add(new CostNotes(found));
    });
  }

  private static String each(CostedPlan found) {
    int left = found.cost().uncounted().size();
    String pieces = CostWords.each(found.cost().pieces());
    String without = left == 0 ? "" : Say.count(left, "Without {0} thing whose cost is not known, named below.", "Without {0} things whose cost is not known, named below.");
    return pieces.isEmpty() ? without : pieces + ". " + without;
  }

  private void showTable() {
    table.getChildren().clear();
    cost.asSet().foundProperty().get().ifPresent(now -> {
      Optional<CostedPlan> then = cost.otherwise().foundProperty().get();
      List<CostRow> rows = CostRows.of(now, then, cost::price);
      table.getChildren().add(new CostTable(rows, now.cost().currency(), then.isPresent(), palette(), opened));
      then.flatMap(other -> more(now, other)).ifPresent(words -> table.getChildren().add(Labels.quiet(words)));
    });
  }

  /** What is said of the other cost beside its figures. */
  private static Optional<String> more(CostedPlan now, CostedPlan then) {
    List<String> left = then.cost().uncounted().stream().filter(one -> !now.cost().uncounted().contains(one)).map(one -> Wording.phrase(one.phrase())).toList();
    return left.isEmpty() ? Optional.empty() : Optional.of(Say.text("What if, not in the total: {0}.", String.join("; ", left)));
  }

  /** The page has its own answer, which comes after the plan's. */
  @Override
  void fill(PlanAnswer.Reckoned reckoned) {}
}
