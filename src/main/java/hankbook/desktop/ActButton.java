package hankbook.desktop;

import javafx.beans.value.ObservableValue;
import javafx.scene.control.Button;
import javafx.scene.layout.VBox;

/** A button that names its act, and beside it why it cannot be done as things stand. */
final class ActButton extends VBox {
  private final Button button;

  ActButton(String act, Runnable doing, ObservableValue<Boolean> possible, ObservableValue<String> whyNot) {
    button = new Button(act);
    button.setOnAction(event -> doing.run());
    button.disableProperty().bind(possible.map(can -> !can));
    button.accessibleHelpProperty().bind(whyNot);
    getStyleClass().add("act");
    getChildren().addAll(button, Labels.quiet(whyNot));
  }

  Button button() {
    return button;
  }

  /** Gives the button a name to be found by. */
  ActButton named(String id) {
    button.setId(id);
    return this;
  }

  /** Makes it the main act of its page. */
  ActButton main() {
    button.getStyleClass().add("accent");
    return this;
  }
}
