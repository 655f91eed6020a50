package hankbook.desktop;

import hankbook.desktop.say.Say;
import hankbook.measure.Length;
import hankbook.studio.shelf.GroupOrder;
import java.util.Comparator;
import java.util.List;
import java.util.function.Consumer;
import java.util.function.Function;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.collections.ListChangeListener;
import javafx.scene.control.Label;
import javafx.scene.control.TableColumn;
import javafx.scene.control.TableView;
import javafx.scene.control.Tooltip;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Region;

/** The columns of the shelf by yarn and colour. Where it is narrow, those give way whose content the bar or the chosen skein's page says as well. */
final class GroupColumns {
  private static final double ROOM_FOR_NAME = 235;
  private static final double ROOM_FOR_LEGEND = 206;

  private final TableView<ShelfLine> table;
  private final ShelfGroups groups;
  private final Consumer<GroupRow> turn;
  private final ReadOnlyObjectWrapper<Length> most = new ReadOnlyObjectWrapper<>(Length.ZERO);

  /** @param turn opens or closes a group */
  GroupColumns(TableView<ShelfLine> table, ShelfGroups groups, Consumer<GroupRow> turn) {
    this.table = table;
    this.groups = groups;
    this.turn = turn;
    groups.groups().addListener((ListChangeListener<GroupRow>) _ -> most.set(groups.groups().stream().map(row -> row.held().length()).max(Comparator.naturalOrder()).orElse(Length.ZERO)));
  }

  /** Gives the table its columns. */
  void add() {
    TableColumn<ShelfLine, ShelfLine> name = column("yarn-and-colour", Say.text("Yarn and colour"), ROOM_FOR_NAME, line -> line);
    name.setCellFactory(_ -> new ShelfLineCell(turn));
    TableColumn<ShelfLine, ShelfLine> stand = column("", "", 110, line -> line);
    stand.setPrefWidth(ROOM_FOR_LEGEND);
    stand.setCellFactory(_ -> new StandCell(most));
    stand.setGraphic(legend(stand));
    TableColumn<ShelfLine, Amount> held = amount("held", Say.text("Held"), 84, ShelfLine::held);
    TableColumn<ShelfLine, Amount> free = amount("free", Say.text("Free"), 84, ShelfLine::free);
    TableColumn<ShelfLine, Amount> reserved = amount("reserved", Say.text("Reserved"), 84, ShelfLine::reserved);
    TableColumn<ShelfLine, Amount> onLoom = amount("on-the-loom", Say.text("On the loom"), 94, ShelfLine::onLoom);
    TableColumn<ShelfLine, String> sort = column("skeins", Say.text("Skeins"), 124, ShelfLine::sort);
    TableColumn<ShelfLine, String> apart = column("off-by", Say.text("Off by"), 60, line -> line instanceof ShelfLine.OfGroup(GroupRow row) ? row.apart() : "");
    apart.visibleProperty().bind(groups.orderProperty().map(order -> order == GroupOrder.NEARNESS).flatMap(near -> groups.pickedProperty().map(hex -> near && !hex.isEmpty())));
    table.getColumns().setAll(List.of(name, apart, held, stand, free, reserved, onLoom, sort));
    GivingWay.below(940, table, onLoom);
    GivingWay.below(850, table, reserved);
    GivingWay.below(760, table, sort);
    GivingWay.below(560, table, held);
    GivingWay.below(460, table, stand);
  }

  /** Which stretch is which; where there is no room for the words, in a tooltip. */
  private static HBox legend(TableColumn<?, ?> column) {
    HBox legend = new HBox(
        StandBar.mark("free"), named(column, Say.text("free")), StandBar.mark("reserved"), named(column, Say.text("reserved")), StandBar.mark("on-loom"), named(column, Say.text("loom")));
    legend.getStyleClass().add("stand-legend");
    Tooltip.install(legend, new Tooltip(Say.text("Full: free. Striped: reserved. Empty: on the loom.")));
    return legend;
  }

  private static Label named(TableColumn<?, ?> column, String text) {
    Label label = Labels.quiet(text);
    label.setWrapText(false);
    label.setMinWidth(Region.USE_PREF_SIZE);
    Labels.showOnly(label, column.widthProperty().map(width -> width.doubleValue() >= ROOM_FOR_LEGEND));
    return label;
  }

  private static TableColumn<ShelfLine, Amount> amount(String id, String name, double width, Function<ShelfLine, Amount> of) {
    TableColumn<ShelfLine, Amount> column = column(id, name, width, of);
    column.getStyleClass().add("amount");
    return column;
  }

  private static <T> TableColumn<ShelfLine, T> column(String id, String name, double width, Function<ShelfLine, T> of) {
    TableColumn<ShelfLine, T> column = new TableColumn<>(name);
    column.setId(TableMemory.id(id));
    column.setCellValueFactory(cell -> new ReadOnlyObjectWrapper<>(of.apply(cell.getValue())));
    column.setMinWidth(width);
    column.setPrefWidth(width);
    column.setSortable(false);
    return column;
  }
}
