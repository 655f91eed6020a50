package hankbook.desktop;

import hankbook.desktop.say.Say;
import java.util.List;
import java.util.function.Function;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.scene.control.TableColumn;
import javafx.scene.control.TableView;
import javafx.scene.layout.VBox;

/** The table of purchases, newest first. Where it is narrow, columns that the chosen one's page repeats give way. */
final class PurchaseTable extends TableView<PurchaseRow> {
  private static final double ROW_HEIGHT = 34;
  private static final double WIDE = 170;
  private static final double ROOM_FOR_TOTAL = 560;
  private static final double ROOM_FOR_LINES = 470;
  private static final double ROOM_FOR_NUMBER = 400;

  PurchaseTable(PurchasesModel model) {
    TableColumn<PurchaseRow, Integer> number = column("no", Say.text("No."), 42, PurchaseRow::number);
    TableColumn<PurchaseRow, Integer> lines = column("lines", Say.text("Lines"), 48, PurchaseRow::lines);
    TableColumn<PurchaseRow, String> total = column("total", Say.text("Total"), 96, PurchaseRow::total);
    TableColumn<PurchaseRow, String> landed = column("landed", Say.text("Landed"), 100, PurchaseRow::landed);
    TableColumn<PurchaseRow, String> from = column("from-whom", Say.text("From whom"), 100, PurchaseRow::from);
    from.setPrefWidth(WIDE);
    List.of(number, lines, total, landed).forEach(column -> column.getStyleClass().add("amount"));
    getColumns().setAll(List.of(
        number, column("date", Say.text("Date"), 92, PurchaseRow::date), from, lines, total, landed, column("state", Say.text("State"), 84, PurchaseRow::state)));
    setId("purchases");
    setAccessibleText(Say.text("Purchases"));
    setFixedCellSize(ROW_HEIGHT);
    setItems(model.rows());
    setColumnResizePolicy(CONSTRAINED_RESIZE_POLICY_ALL_COLUMNS);
    setPlaceholder(nothing());
    GivingWay.below(ROOM_FOR_TOTAL, this, total);
    GivingWay.below(ROOM_FOR_LINES, this, lines);
    GivingWay.below(ROOM_FOR_NUMBER, this, number);
    ChosenRow.bind(this, model.chosenProperty(), model::choose);
  }

  private static VBox nothing() {
    VBox nothing = new VBox(
        Labels.heading(Say.text("No purchase yet")),
        Labels.quiet(Say.text("A purchase is a bill: what was paid at one time in one place. Type its lines as they are printed and say which "
            + "skeins each paid for.")),
        Labels.quiet(Say.text("Carriage and duty are shared over the skeins to the last coin, so that each knows what it cost, and a plan what it will cost.")),
        Labels.quiet(Say.text("A price that was typed when a skein was received counts as well; a purchase takes its place.")));
    nothing.getStyleClass().addAll("nothing-yet", "costs-nothing");
    return nothing;
  }

  private static <T> TableColumn<PurchaseRow, T> column(String id, String name, double width, Function<PurchaseRow, T> of) {
    TableColumn<PurchaseRow, T> column = new TableColumn<>(name);
    column.setId(TableMemory.id(id));
    column.setCellValueFactory(cell -> new ReadOnlyObjectWrapper<>(of.apply(cell.getValue())));
    column.setMinWidth(width);
    column.setPrefWidth(width);
    column.setSortable(false);
    return column;
  }
}
