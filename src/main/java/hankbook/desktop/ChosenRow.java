package hankbook.desktop;

import java.util.Optional;
import java.util.function.Consumer;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.scene.control.TableView;

/** Keeps the row that is selected in a table and the one that its model has chosen the same, whichever changes. */
final class ChosenRow {
  private ChosenRow() {}

  static <T> void bind(TableView<T> table, ReadOnlyObjectProperty<Optional<T>> chosen, Consumer<Optional<T>> choose) {
    table.getSelectionModel().selectedItemProperty().subscribe(row -> {
      if (row != null) {
        choose.accept(Optional.of(row));
      }
    });
    chosen.subscribe(row -> {
      if (row.isEmpty()) {
        table.getSelectionModel().clearSelection();
      } else if (!row.get().equals(table.getSelectionModel().getSelectedItem())) {
        table.getSelectionModel().select(row.get());
      }
    });
  }
}
