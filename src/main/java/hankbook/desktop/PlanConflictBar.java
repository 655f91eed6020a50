package hankbook.desktop;

import atlantafx.base.theme.Styles;
import hankbook.desktop.say.Say;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.VBox;

/** Says that the ledger would not take the open plan as it was entered, and offers both ways out. */
final class PlanConflictBar extends VBox {
  PlanConflictBar(PlansModel model) {
    getStyleClass().add("plan-conflict");
    Label why = new Label();
    why.setId("plan-conflict");
    why.setWrapText(true);
    why.setMinHeight(USE_PREF_SIZE);
    why.textProperty().bind(model.editor().keeping().conflictProperty().map(words -> words.isEmpty() ? "" : Say.text("{0} What you entered stands below and is not kept.", words)));
    FlowPane ways = new FlowPane(
        button("show-kept", Say.text("Show what is kept now"), model::showKept), button("keep-mine", Say.text("Keep mine instead"), model::keepMine));
    ways.getStyleClass().add("plan-act-buttons");
    getChildren().addAll(why, ways);
    setMinHeight(USE_PREF_SIZE);
    Labels.showOnly(this, model.editor().keeping().conflictProperty().map(words -> !words.isEmpty()));
  }

  private static Button button(String id, String words, Runnable act) {
    Button button = new Button(words);
    button.setId(id);
    button.getStyleClass().addAll(Styles.SMALL, Styles.BUTTON_OUTLINED);
    button.setOnAction(_ -> act.run());
    return button;
  }
}
