package hankbook.desktop;

import javafx.geometry.HPos;
import javafx.scene.control.Label;
import javafx.scene.layout.ColumnConstraints;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;

/** Facts under each other, each with its name. */
final class FactList extends GridPane {
  private static final String UNKNOWN = "not known";

  FactList() {
    getStyleClass().add("facts");
    ColumnConstraints names = new ColumnConstraints();
    names.setHgrow(Priority.ALWAYS);
    ColumnConstraints values = new ColumnConstraints();
    values.setHalignment(HPos.RIGHT);
    getColumnConstraints().setAll(names, values);
  }

  void clear() {
    getChildren().clear();
  }

  void add(String name, String value) {
    Label fact = new Label(value.isEmpty() ? UNKNOWN : value);
    fact.setWrapText(true);
    fact.setMinHeight(Region.USE_PREF_SIZE);
    fact.getStyleClass().add(value.isEmpty() ? "quiet" : "fact");
    addRow(getRowCount(), Labels.quiet(name), fact);
  }
}
