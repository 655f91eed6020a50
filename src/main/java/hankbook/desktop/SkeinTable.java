package hankbook.desktop;

import java.util.List;
import java.util.function.Function;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.TableColumn;
import javafx.scene.control.TableView;
import javafx.scene.layout.VBox;

/** The table of skeins. Where it is narrow, columns that the chosen skein's page repeats give way. */
final class SkeinTable extends TableView<SkeinRow> {
  private static final double ROW_HEIGHT = 34;
  private static final double SWATCH_WIDTH = 46;
  private static final double ROOM_FOR_LOT = 650;
  private static final double ROOM_FOR_KNOWN_BY = 760;
  private static final double ROOM_FOR_SURENESS = 830;
  private static final double ROOM_FOR_PLACE = 910;
  private static final double ROOM_FOR_FORM = 970;

  private final TableColumn<SkeinRow, SkeinRow> swatch = column("", SWATCH_WIDTH, row -> row);

  SkeinTable(ShelfModel model, Runnable waysIn) {
    swatch.setCellFactory(column -> new SwatchCell());
    swatch.setSortable(false);
    swatch.setMaxWidth(SWATCH_WIDTH);
    TableColumn<SkeinRow, String> lot = column("Lot", 54, row -> row.skein().lot());
    TableColumn<SkeinRow, String> form = column("Form", 54, row -> row.skein().form().toString());
    TableColumn<SkeinRow, String> place = column("Place", 90, row -> row.skein().location());
    TableColumn<SkeinRow, Amount> onLoom = amount("On the loom", 94, SkeinRow::onLoom);
    TableColumn<SkeinRow, KnownBy> known = column("Known by", 104, SkeinRow::known);
    known.setCellFactory(column -> new KnownByCell());
    TableColumn<SkeinRow, Amount> sure = amount("±", 66, SkeinRow::uncertainty);
    getColumns().setAll(List.of(
        swatch, column("Code", 52, SkeinRow::code), column("Yarn", 92, row -> row.skein().yarn().yarn()),
        column("Colour", 74, row -> row.skein().yarn().colour()), lot, form, place, amount("Held", 78, SkeinRow::held), sure, amount("Free", 78, SkeinRow::free),
        amount("Reserved", 78, SkeinRow::reserved), onLoom, known));
    setId("skeins");
    setAccessibleText("Skeins");
    setFixedCellSize(ROW_HEIGHT);
    setItems(model.shown());
    setSortPolicy(table -> true);
    model.orderProperty().bind(comparatorProperty());
    setPlaceholder(nothing(model, waysIn));
    setColumnResizePolicy(CONSTRAINED_RESIZE_POLICY_ALL_COLUMNS);
    givesWay(form, ROOM_FOR_FORM);
    givesWay(place, ROOM_FOR_PLACE);
    givesWay(known, ROOM_FOR_KNOWN_BY);
    givesWay(sure, ROOM_FOR_SURENESS);
    givesWay(lot, ROOM_FOR_LOT);
    givesWay(onLoom, ROOM_FOR_LOT);
    ChosenRow.bind(this, model.chosenProperty(), model::choose);
  }

  private static VBox nothing(ShelfModel model, Runnable waysIn) {
    Label words = Labels.quiet(model.searchProperty().map(asked -> asked.isBlank() ? "Nothing is on the shelf yet." : "No skein answers to that."));
    Button ways = new Button("Ways to begin");
    ways.setId("ways-in");
    ways.setOnAction(event -> waysIn.run());
    Labels.showOnly(ways, model.searchProperty().map(String::isBlank));
    VBox nothing = new VBox(words, ways);
    nothing.getStyleClass().add("nothing-yet");
    return nothing;
  }

  private void givesWay(TableColumn<SkeinRow, ?> column, double room) {
    GivingWay.below(room, this, column);
  }

  private static TableColumn<SkeinRow, Amount> amount(String name, double width, Function<SkeinRow, Amount> of) {
    TableColumn<SkeinRow, Amount> column = column(name, width, of);
    column.getStyleClass().add("amount");
    return column;
  }

  private static <T> TableColumn<SkeinRow, T> column(String name, double width, Function<SkeinRow, T> of) {
    TableColumn<SkeinRow, T> column = new TableColumn<>(name);
    column.setCellValueFactory(cell -> new ReadOnlyObjectWrapper<>(of.apply(cell.getValue())));
    column.setMinWidth(width);
    column.setPrefWidth(width);
    return column;
  }
}
