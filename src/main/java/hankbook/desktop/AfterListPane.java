package hankbook.desktop;

import atlantafx.base.theme.Styles;
import hankbook.desktop.say.Say;
import javafx.scene.control.ListView;
import javafx.scene.control.ToggleButton;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;

/** The plans whose cloth is to be cut off, and below them those whose book is squared. */
final class AfterListPane extends VBox {
  private final ListView<AfterRow> list;

  AfterListPane(AfterModel model) {
    getStyleClass().add("plan-list-pane");
    list = new ListView<>(model.rows());
    list.setId("after-list");
    list.setAccessibleText(Say.text("Plans after the cloth"));
    list.getStyleClass().addAll("plan-list", Styles.DENSE);
    list.setCellFactory(_ -> new AfterCell());
    list.setPlaceholder(Labels.quiet(Say.text("No cloth yet.")));
    VBox.setVgrow(list, Priority.ALWAYS);
    list.getSelectionModel().selectedItemProperty().subscribe(row -> {
      if (row != null) {
        model.choose(row);
      }
    });
    model.chosenProperty().subscribe(row -> row.ifPresentOrElse(list.getSelectionModel()::select, list.getSelectionModel()::clearSelection));
    ToggleButton learnt = new ToggleButton(Say.text("What was learnt"));
    learnt.setId("what-was-learnt");
    learnt.setMaxWidth(Double.MAX_VALUE);
    learnt.setOnAction(_ -> {
      model.showLearnt();
      learnt.setSelected(true);
    });
    model.learnt().openProperty().subscribe(learnt::setSelected);
    getChildren().addAll(Labels.title(Say.text("After the cloth")), list, learnt);
  }

  /** Puts the keyboard into the list, upon the first plan where none is chosen. */
  void search() {
    list.requestFocus();
    if (list.getSelectionModel().isEmpty()) {
      list.getFocusModel().focus(0);
    }
  }
}
