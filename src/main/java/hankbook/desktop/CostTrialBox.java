package hankbook.desktop;

import atlantafx.base.theme.Styles;
import hankbook.allot.PlanCheck;
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
  private final ToggleButton open = new ToggleButton("What if…");
  private final FieldBox pieces;
  private final FieldRow prices = new FieldRow();

  CostTrialBox(CostModel cost) {
    this.trial = cost.trial();
    getStyleClass().add("cost-list");
    open.setId("cost-what-if");
    open.getStyleClass().add("way-choice");
    open.setAccessibleHelp("Try other rates, prices and counts beside what the plan costs.");
    Button clear = new Button("Clear");
    clear.setId("cost-clear");
    clear.getStyleClass().addAll(Styles.SMALL, Styles.FLAT);
    clear.setAccessibleHelp("Puts away what was tried; the plan and the settings stay as they are.");
    clear.setOnAction(_ -> clear());
    Labels.showOnly(clear, open.selectedProperty());
    HBox head = new HBox(open, clear);
    head.getStyleClass().add("reason-line");
    pieces = FieldRow.field("Pieces", "1", "cost-try-pieces", NARROW, trial.pieces());
    FieldRow fields = new FieldRow(
        FieldRow.field("Cost of an hour", "as set", "cost-try-rate", NARROW, trial.rate()),
        FieldRow.field("Overheads", "as set", "cost-try-overhead", NARROW, trial.overhead()), pieces);
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
    return "Price of " + yarn.holds().map(holds -> Wording.yarn(holds) + " ").orElse("") + yarn.yarn();
  }

  private static String example(YarnToPrice yarn) {
    return yarn.each().map(MoneyText::print).orElse(yarn.holds().isPresent() ? "price not known" : "price / metres on one");
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
