package hankbook.desktop;

import atlantafx.base.theme.Styles;
import java.util.Map;
import java.util.stream.Stream;
import javafx.css.PseudoClass;
import javafx.scene.control.Label;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.VBox;

/** What can be done with the plan's yarn, why the rest cannot, and what came of the last thing done. */
final class PlanActBar extends VBox {
  private static final PseudoClass DANGER = PseudoClass.getPseudoClass("danger");

  private final PlanActs acts;
  private final Label said = line("plan-said");
  private final Label why = line("plan-hindrances");

  PlanActBar(PlansModel model) {
    this.acts = model.acts();
    getStyleClass().add("plan-acts");
    PlanActButton reserve = new PlanActButton(PlanAct.RESERVE, model);
    reserve.getStyleClass().add(Styles.ACCENT);
    FlowPane buttons = new FlowPane(
        reserve, new PlanActButton(PlanAct.RESERVE_WHAT_THERE_IS, model), new PlanActButton(PlanAct.RELEASE, model), new PlanActButton(PlanAct.WIND, model));
    buttons.getStyleClass().add("plan-act-buttons");
    why.getStyleClass().addAll(Styles.TEXT_SMALL, Styles.TEXT_MUTED);
    getChildren().addAll(said, buttons, why);
    setMinHeight(USE_PREF_SIZE);
    acts.hindrancesProperty().subscribe(this::show);
    acts.lifeProperty().subscribe(_ -> say());
    acts.saidProperty().subscribe(_ -> say());
  }

  private static Label line(String id) {
    Label line = new Label();
    line.setId(id);
    line.getStyleClass().add(id);
    line.setWrapText(true);
    line.setMinHeight(USE_PREF_SIZE);
    line.managedProperty().bind(line.textProperty().isNotEmpty());
    return line;
  }

  /** Winding waits for reserving anyhow, so that one reason is enough. */
  private void show(Map<PlanAct, String> hindrances) {
    why.setText(Stream.of(PlanAct.RESERVE, PlanAct.WIND)
        .filter(act -> !hindrances.getOrDefault(act, "").isEmpty())
        .findFirst().map(act -> act.words() + ": " + hindrances.get(act)).orElse(""));
  }

  /** What was last said; in between, where the plan's yarn is. */
  private void say() {
    PlanSaid words = acts.saidProperty().get();
    said.setText(words.text().isEmpty() ? acts.lifeProperty().get().sentence() : words.text());
    said.pseudoClassStateChanged(DANGER, words.trouble());
  }
}
