package hankbook.desktop;

import atlantafx.base.theme.Styles;
import hankbook.allot.PlanCheck;
import hankbook.desktop.say.Say;
import hankbook.measure.MoneyText;
import hankbook.plan.Plan;
import hankbook.studio.YarnToPrice;
import java.util.List;
import javafx.scene.control.Button;
import javafx.scene.control.ToggleButton;
import javafx.scene.layout.HBox;
import javafx.scene.layout.VBox;

/** What might be otherwise, to be tried without keeping it: shown when it is asked for, and put away by Clear. */
final class CostTrialBox extends VBox {
  private static final double NARROW = 110;
  private static final double WIDE = 250;

  private final CostTrial trial;
  private final ToggleButton open = new ToggleButton(Say.text("What if…"));
  private final FieldBox pieces;
  private final FieldRow prices = new FieldRow();

  CostTrialBox(CostModel cost) {
    this.trial = cost.trial();
    getStyleClass().add("cost-list");
    open.setId("cost-what-if");
    open.getStyleClass().add("way-choice");
    open.setAccessibleHelp(Say.text("Try other rates, prices and counts beside what the plan costs."));
    Button clear = new Button(Say.text("Clear"));
    clear.setId("cost-clear");
    clear.getStyleClass().addAll(Styles.SMALL, Styles.FLAT);
    clear.setAccessibleHelp(Say.text("Puts away what was tried; the plan and the settings stay as they are."));
    clear.setOnAction(_ -> clear());
    Labels.showOnly(clear, open.selectedProperty());
    HBox head = new HBox(open, clear);
    head.getStyleClass().add("reason-line");
    pieces = FieldRow.field(Say.text("Pieces"), "1", "cost-try-pieces", NARROW, trial.pieces());
    FieldRow fields = new FieldRow(
        FieldRow.field(Say.text("Cost of an hour"), Say.text("as set"), "cost-try-rate", NARROW, trial.rate()),
        FieldRow.field(Say.text("Overheads"), Say.text("as set"), "cost-try-overhead", NARROW, trial.overhead()), pieces);
    VBox all = new VBox(fields, prices, Labels.fault(cost.otherwise().troubleProperty()));
    all.setId("cost-tried");
    all.getStyleClass().add("cost-list");
    Labels.showOnly(all, open.selectedProperty());
    trial.pricesProperty().subscribe(this::offer);
    getChildren().addAll(head, all);
  }

  private void clear() {
    trial.clear();
    open.setSelected(false);
    open.requestFocus();
  }

  private void offer(List<CostTrial.YarnPrice> yarns) {
    prices.getChildren().clear();
    for (CostTrial.YarnPrice yarn : yarns) {
      prices.getChildren().add(FieldRow.field(name(yarn.yarn()), example(yarn.yarn()), "cost-try-" + yarn.yarn().yarn(), WIDE, yarn.price()));
    }
    Labels.showOnly(prices, open.selectedProperty().map(shown -> shown && !yarns.isEmpty()));
  }

  private static String name(YarnToPrice yarn) {
    return yarn.holds().map(holds -> Say.text("Price of {0} {1}", Wording.yarn(holds), yarn.yarn())).orElseGet(() -> Say.text("Price of {0}", yarn.yarn()));
  }

  private static String example(YarnToPrice yarn) {
    return yarn.each().map(MoneyText::print).orElseGet(() -> yarn.holds().isPresent() ? Say.text("price not known") : Say.text("price / metres on one"));
  }

  /** Shows what the plan has where nothing is tried. */
  void follow(PlanCheck check) {
    Plan plan = check.plan();
    pieces.setVisible(!plan.pieces().isEmpty());
    pieces.setManaged(pieces.isVisible());
    plan.pieces().stream().findFirst().ifPresent(piece -> {
      pieces.field().setPromptText(Integer.toString(piece.count()));
      pieces.name("Count, " + piece.name());
    });
  }
}
