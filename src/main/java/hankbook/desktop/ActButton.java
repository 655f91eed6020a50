package hankbook.desktop;

import javafx.beans.value.ObservableValue;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;

/** A button that names its act, and beside it why it cannot be done as things stand. */
final class ActButton extends VBox {
  private final Button button;
  private final Label why;

  ActButton(String act, Runnable doing, ObservableValue<Boolean> possible, ObservableValue<String> whyNot) {
    button = new Button(act);
    button.setOnAction(event -> doing.run());
    button.disableProperty().bind(possible.map(can -> !can));
    button.accessibleHelpProperty().bind(whyNot);
    getStyleClass().add("act");
    why = Labels.quiet(whyNot);
    getChildren().addAll(button, why);
  }

  /** Stands at the end of a field's line, with the reason below both. */
  ActButton after(Node field) {
    HBox line = new HBox(field, button);
    line.getStyleClass().add("reason-line");
    HBox.setHgrow(field, Priority.ALWAYS);
    getChildren().setAll(line, why);
    return this;
  }

  /** Stands below the reason, so that it does not move while that changes. */
  ActButton belowReason() {
    getChildren().setAll(why, button);
    return this;
  }

  /** Gives the button a name to be found by. */
  ActButton named(String id) {
    button.setId(id);
    return this;
  }

  /** Lets the button's words follow what it would do. */
  void words(ObservableValue<String> words) {
    button.textProperty().bind(words);
    button.setMinWidth(USE_PREF_SIZE);
  }

  /** Makes it the main act of its page. */
  ActButton main() {
    button.getStyleClass().add("accent");
    return this;
  }
}
