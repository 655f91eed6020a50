package hankbook.desktop;

import hankbook.desktop.say.Say;
import javafx.geometry.HPos;
import javafx.scene.Node;
import javafx.scene.control.Hyperlink;
import javafx.scene.control.Label;
import javafx.scene.layout.ColumnConstraints;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;

/** Facts under each other, each with its name. */
final class FactList extends GridPane {
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
    add(Labels.quiet(name), value);
  }

  /** A fact whose name opens what it is about. */
  void add(String name, String value, String id, Runnable open) {
    Hyperlink link = new Hyperlink(name);
    link.setId(id);
    link.setWrapText(true);
    link.getStyleClass().add("fact-link");
    link.setOnAction(_ -> open.run());
    add(link, value);
  }

  private void add(Node name, String value) {
    Label fact = new Label(value.isEmpty() ? Say.text("not known") : value);
    fact.setWrapText(true);
    fact.setMinHeight(Region.USE_PREF_SIZE);
    fact.getStyleClass().add(value.isEmpty() ? "quiet" : "fact");
    addRow(getRowCount(), name, fact);
  }
}
