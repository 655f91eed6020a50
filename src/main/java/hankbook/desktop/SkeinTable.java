package hankbook.desktop;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.scene.control.Label;
import javafx.scene.control.TableColumn;
import javafx.scene.control.TableView;

/** The table of skeins. Where it is narrow, columns that the chosen skein's page repeats give way. */
final class SkeinTable extends TableView<SkeinRow> {
  private static final double ROW_HEIGHT = 34;
  private static final double WIDE_ENOUGH = 830;

  private final TableColumn<SkeinRow, SkeinRow> swatch = column("", 46, row -> row);
  private final List<TableColumn<SkeinRow, ?>> givingWay;

  SkeinTable(ShelfModel model) {
    swatch.setCellFactory(column -> new SwatchCell());
    swatch.setSortable(false);
    TableColumn<SkeinRow, String> lot = column("Lot", 64, row -> row.skein().lot());
    TableColumn<SkeinRow, String> form = column("Form", 58, row -> row.skein().form().toString());
    TableColumn<SkeinRow, String> place = column("Place", 102, row -> row.skein().location());
    TableColumn<SkeinRow, KnownBy> known = column("Known by", 104, SkeinRow::known);
    known.setCellFactory(column -> new KnownByCell());
    givingWay = List.of(form, place, known);
    getColumns().setAll(List.of(
        swatch, column("Code", 60, SkeinRow::code), column("Yarn", 102, row -> row.skein().yarn().yarn()),
        column("Colour", 82, row -> row.skein().yarn().colour()), lot, form, place, amount("Held", SkeinRow::held), amount("Free", SkeinRow::free),
        amount("Reserved", SkeinRow::reserved), amount("On the loom", SkeinRow::onLoom), known));
    setId("skeins");
    setAccessibleText("Skeins");
    setFixedCellSize(ROW_HEIGHT);
    setItems(model.shown());
    setSortPolicy(table -> true);
    model.orderProperty().bind(comparatorProperty());
    setPlaceholder(new Label("No skein answers to that."));
    widthProperty().subscribe(width -> fit(width.doubleValue()));
    choose(model);
  }

  private void choose(ShelfModel model) {
    getSelectionModel().selectedItemProperty().subscribe(row -> {
      if (row != null) {
        model.choose(Optional.of(row));
      }
    });
    model.chosenProperty().subscribe(chosen -> {
      if (chosen.isEmpty()) {
        getSelectionModel().clearSelection();
      } else if (!chosen.get().equals(getSelectionModel().getSelectedItem())) {
        getSelectionModel().select(chosen.get());
      }
    });
  }

  private void fit(double width) {
    givingWay.forEach(column -> column.setVisible(width >= WIDE_ENOUGH));
  }

  private static TableColumn<SkeinRow, Amount> amount(String name, Function<SkeinRow, Amount> of) {
    TableColumn<SkeinRow, Amount> column = column(name, 88, of);
    column.getStyleClass().add("amount");
    return column;
  }

  private static <T> TableColumn<SkeinRow, T> column(String name, double width, Function<SkeinRow, T> of) {
    TableColumn<SkeinRow, T> column = new TableColumn<>(name);
    column.setCellValueFactory(cell -> new ReadOnlyObjectWrapper<>(of.apply(cell.getValue())));
    column.setPrefWidth(width);
    return column;
  }
}
