package hankbook.desktop;

import javafx.geometry.VPos;
import javafx.scene.Node;
import javafx.scene.layout.FlowPane;

/** Fields of a page beside each other as far as there is room, each as wide as it is said. */
final class FieldRow extends FlowPane {
  FieldRow(Node... fields) {
    getStyleClass().add("plan-tried");
    setRowValignment(VPos.TOP);
    getChildren().addAll(fields);
  }

  /** A field for a value that is tried and not kept. */
  static FieldBox field(String name, String example, String id, double width, TypedValue<?> value) {
    FieldBox box = new FieldBox(name, example, value.textProperty(), value.messageProperty()).named(id).quantity();
    box.setPrefWidth(width);
    box.setMaxWidth(width);
    return box;
  }
}
