package hankbook.desktop;

import hankbook.desktop.say.Say;
import javafx.beans.binding.Bindings;
import javafx.collections.ObservableList;
import javafx.scene.control.Label;
import javafx.scene.control.ListView;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;

/** What is wrong with a file of which nothing was taken; not to be seen while nothing is. */
final class FaultList extends VBox {
  /** @param id by which the list is found */
  FaultList(ObservableList<String> faults, String id) {
    Label heading = Labels.heading("");
    heading.textProperty().bind(Bindings.size(faults).map(size ->
        Say.count(size.intValue(), "Nothing was taken from the file: {0} fault", "Nothing was taken from the file: {0} faults")));
    ListView<String> list = new ListView<>(faults);
    list.setId(id);
    list.setAccessibleText(Say.text("Faults in the file"));
    list.setCellFactory(_ -> new WrappedCell());
    VBox.setVgrow(list, Priority.ALWAYS);
    getChildren().addAll(heading, list);
    getStyleClass().add("faults");
    VBox.setVgrow(this, Priority.ALWAYS);
    Labels.showOnly(this, Bindings.isNotEmpty(faults));
  }
}
