package hankbook.desktop;

import hankbook.desktop.say.Say;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import javafx.beans.property.ReadOnlyStringWrapper;
import javafx.scene.control.TableColumn;
import javafx.scene.control.TableView;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;

/** The table of entries, in the ledger's own order. A line stands in it before what it says was read. */
final class JournalTable extends TableView<JournalLine> {
  private static final double ROW_HEIGHT = 34;

  private final JournalModel model;

  /** @param open what follows where a line is opened by the keyboard or by a double click */
  JournalTable(JournalModel model, Runnable open) {
    this.model = model;
    TableColumn<JournalLine, String> number = column("no", Say.text("No."), 56, row -> Long.toString(row.number()));
    number.setCellValueFactory(cell -> new ReadOnlyStringWrapper(Long.toString(cell.getValue().number())));
    number.getStyleClass().add("amount");
    TableColumn<JournalLine, String> note = column("note", Say.text("Note"), 70, JournalRow::note);
    note.setCellFactory(_ -> new TippedCell<>());
    getColumns().setAll(List.of(
        number, column("date", Say.text("Date"), 92, JournalRow::date), column("what", Say.text("What"), 88, JournalRow::what), column("yarn", Say.text("Yarn"), 158, JournalRow::yarn),
        column("from-where-to-where", Say.text("From where to where"), 200, JournalRow::way), column("by", Say.text("By"), 46, JournalRow::by), note,
        column("state", Say.text("State"), 128, JournalRow::state)));
    setId("entries");
    setAccessibleText(Say.text("Entries"));
    setFixedCellSize(ROW_HEIGHT);
    setColumnResizePolicy(CONSTRAINED_RESIZE_POLICY_ALL_COLUMNS);
    setPlaceholder(Labels.quiet(model.searchProperty().map(asked -> asked.isBlank() ? Say.text("Nothing was entered yet.") : Say.text("No entry answers to that."))));
    model.shownProperty().subscribe(this::setItems);
    getSelectionModel().selectedItemProperty().subscribe(line -> {
      if (line != null) {
        model.choose(Optional.of(line));
      }
    });
    model.chosenProperty().subscribe(this::select);
    openBy(open);
  }

  private void openBy(Runnable open) {
    addEventHandler(KeyEvent.KEY_PRESSED, pressed -> {
      if (pressed.getCode() == KeyCode.ENTER && getSelectionModel().getSelectedItem() != null) {
        pressed.consume();
        open.run();
      }
    });
    setOnMouseClicked(click -> {
      if (click.getClickCount() == 2 && getSelectionModel().getSelectedItem() != null) {
        open.run();
      }
    });
  }

  /** By place: to look through the lines for one would read them all. */
  private void select(Optional<JournalRow> row) {
    int place = row.map(now -> model.shownProperty().get().place(now.number())).orElse(-1);
    if (row.isEmpty()) {
      getSelectionModel().clearSelection();
    } else if (place >= 0 && place != getSelectionModel().getSelectedIndex()) {
      getSelectionModel().clearAndSelect(place);
      scrollTo(Math.max(0, place - 3));
    }
  }

  private static TableColumn<JournalLine, String> column(String id, String name, double width, Function<JournalRow, String> of) {
    TableColumn<JournalLine, String> column = new TableColumn<>(name);
    column.setId(TableMemory.id(id));
    column.setCellValueFactory(cell -> cell.getValue().rowProperty().map(row -> row.map(of).orElse("")));
    column.setMinWidth(width);
    column.setPrefWidth(width);
    column.setSortable(false);
    return column;
  }
}
