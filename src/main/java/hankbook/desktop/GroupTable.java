package hankbook.desktop;

import hankbook.desktop.say.Say;
import hankbook.measure.Length;
import hankbook.studio.shelf.GroupOrder;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.IntStream;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.collections.ListChangeListener;
import javafx.scene.control.Label;
import javafx.scene.control.TableColumn;
import javafx.scene.control.TableRow;
import javafx.scene.control.TableView;
import javafx.scene.control.Tooltip;
import javafx.scene.input.KeyEvent;
import javafx.scene.input.MouseButton;
import javafx.scene.layout.HBox;
import org.jspecify.annotations.Nullable;

/** The shelf by yarn and colour; each opens to its skeins, by its arrow, a double click or the arrow keys. */
final class GroupTable extends TableView<ShelfLine> {
  private static final double ROW_HEIGHT = 34;
  private static final double ROOM_FOR_NAME = 235;
  private static final double ROOM_FOR_LEGEND = 206;

  private final ShelfModel model;
  private final ShelfGroups groups;
  private final ReadOnlyObjectWrapper<Length> most = new ReadOnlyObjectWrapper<>(Length.ZERO);
  private Optional<String> selected = Optional.empty();

  GroupTable(ShelfModel model) {
    this.model = model;
    groups = model.groups();
    setId("groups");
    setAccessibleText(Say.text("Yarns and colours"));
    setFixedCellSize(ROW_HEIGHT);
    setColumnResizePolicy(CONSTRAINED_RESIZE_POLICY_ALL_COLUMNS);
    setPlaceholder(new Label());
    addColumns();
    setRowFactory(_ -> new Row());
    addEventFilter(KeyEvent.KEY_PRESSED, this::pressed);
    groups.groups().addListener((ListChangeListener<GroupRow>) _ -> most.set(groups.groups().stream().map(row -> row.held().length()).max(Comparator.naturalOrder()).orElse(Length.ZERO)));
    setItems(groups.lines());
    groups.lines().addListener((ListChangeListener<ShelfLine>) _ -> selectAgain());
    getSelectionModel().selectedItemProperty().subscribe(this::selected);
    model.chosenProperty().subscribe(this::choose);
  }

  private void addColumns() {
    TableColumn<ShelfLine, ShelfLine> name = column(Say.text("Yarn and colour"), ROOM_FOR_NAME, line -> line);
    name.setCellFactory(_ -> new ShelfLineCell(this::turn));
    TableColumn<ShelfLine, ShelfLine> stand = column("", 110, line -> line);
    stand.setPrefWidth(ROOM_FOR_LEGEND);
    stand.setCellFactory(_ -> new StandCell(most));
    stand.setGraphic(legend(stand));
    TableColumn<ShelfLine, Amount> held = amount(Say.text("Held"), 84, ShelfLine::held);
    TableColumn<ShelfLine, Amount> free = amount(Say.text("Free"), 84, ShelfLine::free);
    TableColumn<ShelfLine, Amount> reserved = amount(Say.text("Reserved"), 84, ShelfLine::reserved);
    TableColumn<ShelfLine, Amount> onLoom = amount(Say.text("On the loom"), 94, ShelfLine::onLoom);
    TableColumn<ShelfLine, String> sort = column(Say.text("Skeins"), 124, ShelfLine::sort);
    TableColumn<ShelfLine, String> apart = column(Say.text("Off by"), 60, line -> line instanceof ShelfLine.OfGroup(GroupRow row) ? row.apart() : "");
    apart.visibleProperty().bind(groups.orderProperty().map(order -> order == GroupOrder.NEARNESS).flatMap(near -> groups.pickedProperty().map(hex -> near && !hex.isEmpty())));
    getColumns().setAll(List.of(name, apart, held, stand, free, reserved, onLoom, sort));
    GivingWay.below(940, this, onLoom);
    GivingWay.below(850, this, reserved);
    GivingWay.below(760, this, sort);
    GivingWay.below(560, this, held);
    GivingWay.below(460, this, stand);
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
    label.setMinWidth(USE_PREF_SIZE);
    Labels.showOnly(label, column.widthProperty().map(width -> width.doubleValue() >= ROOM_FOR_LEGEND));
    return label;
  }

  private static TableColumn<ShelfLine, Amount> amount(String name, double width, Function<ShelfLine, Amount> of) {
    TableColumn<ShelfLine, Amount> column = column(name, width, of);
    column.getStyleClass().add("amount");
    return column;
  }

  private static <T> TableColumn<ShelfLine, T> column(String name, double width, Function<ShelfLine, T> of) {
    TableColumn<ShelfLine, T> column = new TableColumn<>(name);
    column.setCellValueFactory(cell -> new ReadOnlyObjectWrapper<>(of.apply(cell.getValue())));
    column.setMinWidth(width);
    column.setPrefWidth(width);
    column.setSortable(false);
    return column;
  }

  /** A line that says all of itself to whoever has it read. */
  private final class Row extends TableRow<ShelfLine> {
    Row() {
      setOnMouseClicked(click -> {
        if (click.getButton() == MouseButton.PRIMARY && click.getClickCount() == 2 && getItem() instanceof ShelfLine.OfGroup(GroupRow row)) {
          turn(row);
        }
      });
    }

    @Override
    protected void updateItem(@Nullable ShelfLine line, boolean empty) {
      super.updateItem(line, empty);
      setAccessibleText(line instanceof ShelfLine.OfGroup(GroupRow row) ? row.words() : null);
    }
  }

  private void turn(GroupRow row) {
    if (row.openProperty().get()) {
      groups.close(row);
    } else {
      groups.open(row);
    }
  }

  private void pressed(KeyEvent key) {
    ShelfLine line = getSelectionModel().getSelectedItem();
    if (line == null || key.isShortcutDown() || key.isAltDown()) {
      return;
    }
    GroupRow group = groups.groupOf(line);
    switch (key.getCode()) {
      case RIGHT -> groups.open(group);
      case LEFT -> {
        select(new ShelfLine.OfGroup(group));
        groups.close(group);
      }
      case ENTER, SPACE -> {
        if (line instanceof ShelfLine.OfGroup) {
          turn(group);
        }
      }
      default -> {
        return;
      }
    }
    key.consume();
  }

  /** Opens a yarn and colour and goes to it. */
  void open(GroupRow row) {
    groups.open(row);
    ShelfLine line = new ShelfLine.OfGroup(row);
    select(line);
    scrollTo(Math.max(0, groups.lines().indexOf(line) - 1));
    requestFocus();
  }

  private void select(ShelfLine line) {
    getSelectionModel().clearAndSelect(groups.lines().indexOf(line));
  }

  private void selected(@Nullable ShelfLine line) {
    if (line != null) {
      selected = Optional.of(key(line));
    }
    if (line instanceof ShelfLine.OfSkein(SkeinRow row)) {
      model.choose(Optional.of(row));
    }
  }

  private void choose(Optional<SkeinRow> row) {
    if (row.isEmpty()) {
      if (getSelectionModel().getSelectedItem() instanceof ShelfLine.OfSkein) {
        getSelectionModel().clearSelection();
      }
    } else {
      selected = Optional.of(key(new ShelfLine.OfSkein(row.get())));
      selectAgain();
    }
  }

  /** Lines that were made anew are the same line still where they are of the same thing. */
  private void selectAgain() {
    ShelfLine now = getSelectionModel().getSelectedItem();
    if (selected.isPresent() && (now == null || !key(now).equals(selected.get()))) {
      IntStream.range(0, groups.lines().size()).filter(line -> key(groups.lines().get(line)).equals(selected.get())).findFirst().ifPresent(getSelectionModel()::clearAndSelect);
    }
  }

  private static String key(ShelfLine line) {
    return switch (line) {
      case ShelfLine.OfGroup(GroupRow row) -> row.yarn().yarn() + "\n" + row.yarn().colour();
      case ShelfLine.OfSkein(SkeinRow row) -> row.code();
    };
  }
}
