package hankbook.desktop;

import java.util.List;
import java.util.function.Function;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.scene.control.TableColumn;
import javafx.scene.control.TableView;

/** The table of entries, in the ledger's own order. */
final class JournalTable extends TableView<JournalRow> {
  private static final double ROW_HEIGHT = 34;

  JournalTable(JournalModel model) {
    TableColumn<JournalRow, Long> number = column("No.", 42, JournalRow::number);
    number.getStyleClass().add("amount");
    getColumns().setAll(List.of(
        number, column("Date", 92, JournalRow::date), column("What", 88, JournalRow::what), column("Yarn", 158, JournalRow::yarn),
        column("From where to where", 208, JournalRow::way), column("By", 46, JournalRow::by), column("Note", 70, JournalRow::note),
        column("State", 134, JournalRow::state)));
    setId("entries");
    setAccessibleText("Entries");
    setFixedCellSize(ROW_HEIGHT);
    setItems(model.shown());
    setColumnResizePolicy(CONSTRAINED_RESIZE_POLICY_ALL_COLUMNS);
    setPlaceholder(Labels.quiet(model.searchProperty().map(asked -> asked.isBlank() ? "Nothing was entered yet." : "No entry answers to that.")));
    ChosenRow.bind(this, model.chosenProperty(), model::choose);
  }

  private static <T> TableColumn<JournalRow, T> column(String name, double width, Function<JournalRow, T> of) {
    TableColumn<JournalRow, T> column = new TableColumn<>(name);
    column.setCellValueFactory(cell -> new ReadOnlyObjectWrapper<>(of.apply(cell.getValue())));
    column.setMinWidth(width);
    column.setPrefWidth(width);
    column.setSortable(false);
    return column;
  }
}
