package hankbook.desktop;

import atlantafx.base.theme.Styles;
import java.util.EnumMap;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import javafx.css.PseudoClass;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.VBox;

/** What can be done with the plan's yarn, why the rest cannot, and what came of the last thing done. */
final class PlanActBar extends VBox {
  private static final PseudoClass DANGER = PseudoClass.getPseudoClass("danger");

  private final Map<PlanAct, Button> buttons = new EnumMap<>(PlanAct.class);
  private final Label why = new Label();
  private final Label said = new Label();

  PlanActBar(PlansModel model) {
    getStyleClass().add("plan-acts");
    FlowPane row = new FlowPane();
    row.getStyleClass().add("plan-act-buttons");
    for (PlanAct act : PlanAct.values()) {
      Button button = new Button(act.words());
      button.setId("plan-" + act.name().toLowerCase(Locale.ROOT));
      button.setOnAction(_ -> model.act(act));
      buttons.put(act, button);
      row.getChildren().add(button);
    }
    button(PlanAct.RESERVE).getStyleClass().add(Styles.ACCENT);
    why.getStyleClass().addAll(Styles.TEXT_SMALL, Styles.TEXT_MUTED);
    why.setWrapText(true);
    why.setMinHeight(USE_PREF_SIZE);
    why.setId("plan-hindrances");
    said.getStyleClass().add("plan-said");
    said.setWrapText(true);
    said.setMinHeight(USE_PREF_SIZE);
    said.setId("plan-said");
    said.managedProperty().bind(said.visibleProperty());
    getChildren().addAll(said, row, why);
    setMinHeight(USE_PREF_SIZE);
    model.acts().hindrancesProperty().subscribe(this::show);
    model.acts().saidProperty().subscribe(this::say);
  }

  private Button button(PlanAct act) {
    return Objects.requireNonNull(buttons.get(act));
  }

  private void show(Map<PlanAct, String> hindrances) {
    StringBuilder words = new StringBuilder();
    for (PlanAct act : PlanAct.values()) {
      String hindrance = hindrances.getOrDefault(act, "");
      Button button = button(act);
      button.setDisable(!hindrance.isEmpty());
      button.setAccessibleHelp(hindrance);
      if (act == PlanAct.RESERVE_WHAT_THERE_IS) {
        offer(button, hindrance.isEmpty());
      } else if (!hindrance.isEmpty()) {
        words.append(words.isEmpty() ? "" : "\n").append(act.words()).append(": ").append(hindrance);
      }
    }
    why.setText(words.toString());
  }

  /** Reserving a part only is offered where a yarn is short. */
  private static void offer(Button button, boolean offered) {
    button.setVisible(offered);
    button.setManaged(offered);
  }

  private void say(PlanSaid words) {
    said.setText(words.text());
    said.setVisible(!words.text().isEmpty());
    said.pseudoClassStateChanged(DANGER, words.trouble());
  }
}
