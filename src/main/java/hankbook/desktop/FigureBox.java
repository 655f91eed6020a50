package hankbook.desktop;

import atlantafx.base.theme.Styles;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.layout.VBox;

/** A number with what it is above it. */
final class FigureBox extends VBox {
  FigureBox(String caption, Node... numbers) {
    Label name = new Label(caption);
    name.getStyleClass().addAll(Styles.TEXT_SMALL, Styles.TEXT_MUTED);
    getStyleClass().add("figure-box");
    getChildren().add(name);
    getChildren().addAll(numbers);
  }
}
