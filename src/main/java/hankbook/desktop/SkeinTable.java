package hankbook.desktop;

import hankbook.desktop.say.Say;
import java.util.List;
import java.util.function.Function;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.scene.control.Label;
import javafx.scene.control.TableColumn;
import javafx.scene.control.TableView;

/** The table of skeins. Where it is narrow, columns that the chosen skein's page repeats give way. */
final class SkeinTable extends TableView<SkeinRow> {
  private static final double ROW_HEIGHT = 34;
  private static final double SWATCH_WIDTH = 46;
  private static final double ROOM_FOR_HELD = 450;
  private static final double ROOM_FOR_RESERVED = 540;
  private static final double ROOM_FOR_LOT = 680;
  private static final double ROOM_FOR_KNOWN_BY = 760;
  private static final double ROOM_FOR_SURENESS = 830;
  private static final double ROOM_FOR_PLACE = 910;
  private static final double ROOM_FOR_FORM = 970;

  private final TableColumn<SkeinRow, SkeinRow> swatch = column("", "", SWATCH_WIDTH, row -> row);

  SkeinTable(ShelfModel model) {
    swatch.setCellFactory(column -> new SwatchCell());
    swatch.setSortable(false);
    swatch.setMaxWidth(SWATCH_WIDTH);
    TableColumn<SkeinRow, String> lot = column("lot", Say.text("Lot"), 54, row -> row.skein().lot());
    TableColumn<SkeinRow, String> form = column("form", Say.text("Form"), 54, row -> Say.known(row.skein().form().toString()));
    TableColumn<SkeinRow, String> place = column("place", Say.text("Place"), 90, row -> row.skein().location());
    TableColumn<SkeinRow, Amount> onLoom = amount("on-the-loom", Say.text("On the loom"), 94, SkeinRow::onLoom);
    TableColumn<SkeinRow, KnownBy> known = column("known-by", Say.text("Known by"), 104, SkeinRow::known);
    known.setCellFactory(column -> new KnownByCell());
    TableColumn<SkeinRow, Amount> sure = amount("uncertainty", "±", 66, SkeinRow::uncertainty);
    TableColumn<SkeinRow, Amount> held = amount("held", Say.text("Held"), 78, SkeinRow::held);
    TableColumn<SkeinRow, Amount> reserved = amount("reserved", Say.text("Reserved"), 78, SkeinRow::reserved);
    getColumns().setAll(List.of(
        swatch, column("code", Say.text("Code"), 52, SkeinRow::code), column("yarn", Say.text("Yarn"), 92, row -> row.skein().yarn().yarn()),
        column("colour", Say.text("Colour"), 74, row -> row.skein().yarn().colour()), lot, form, place, held, sure, amount("free", Say.text("Free"), 78, SkeinRow::free),
        reserved, onLoom, known));
    setId("skeins");
    setAccessibleText(Say.text("Skeins"));
    setFixedCellSize(ROW_HEIGHT);
    setItems(model.shown());
    setSortPolicy(table -> true);
    model.orderProperty().bind(comparatorProperty());
    setPlaceholder(new Label());
    setColumnResizePolicy(CONSTRAINED_RESIZE_POLICY_ALL_COLUMNS);
    givesWay(form, ROOM_FOR_FORM);
    givesWay(place, ROOM_FOR_PLACE);
    givesWay(known, ROOM_FOR_KNOWN_BY);
    givesWay(sure, ROOM_FOR_SURENESS);
    givesWay(lot, ROOM_FOR_LOT);
    givesWay(onLoom, ROOM_FOR_LOT);
    givesWay(reserved, ROOM_FOR_RESERVED);
    givesWay(held, ROOM_FOR_HELD);
    ChosenRow.bind(this, model.chosenProperty(), model::choose);
  }

  private void givesWay(TableColumn<SkeinRow, ?> column, double room) {
    GivingWay.below(room, this, column);
  }

  private static TableColumn<SkeinRow, Amount> amount(String id, String name, double width, Function<SkeinRow, Amount> of) {
    TableColumn<SkeinRow, Amount> column = column(id, name, width, of);
    column.getStyleClass().add("amount");
    return column;
  }

  private static <T> TableColumn<SkeinRow, T> column(String id, String name, double width, Function<SkeinRow, T> of) {
    TableColumn<SkeinRow, T> column = new TableColumn<>(name);
    column.setId(TableMemory.id(id));
    column.setCellValueFactory(cell -> new ReadOnlyObjectWrapper<>(of.apply(cell.getValue())));
    column.setMinWidth(width);
    column.setPrefWidth(width);
    return column;
  }
}
