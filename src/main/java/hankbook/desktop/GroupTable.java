package hankbook.desktop;

import hankbook.desktop.say.Say;
import java.util.Optional;
import java.util.stream.IntStream;
import javafx.collections.ListChangeListener;
import javafx.scene.control.Label;
import javafx.scene.control.TableRow;
import javafx.scene.control.TableView;
import javafx.scene.input.KeyEvent;
import javafx.scene.input.MouseButton;
import org.jspecify.annotations.Nullable;

/** The shelf by yarn and colour; each opens to its skeins, by its arrow, a double click or the arrow keys. */
final class GroupTable extends TableView<ShelfLine> {
  private static final double ROW_HEIGHT = 34;

  private final ShelfModel model;
  private final ShelfGroups groups;
  private Optional<String> selected = Optional.empty();

  GroupTable(ShelfModel model) {
    this.model = model;
    groups = model.groups();
    setId("groups");
    setAccessibleText(Say.text("Yarns and colours"));
    setFixedCellSize(ROW_HEIGHT);
    setColumnResizePolicy(CONSTRAINED_RESIZE_POLICY_ALL_COLUMNS);
    setPlaceholder(new Label());
    new GroupColumns(this, groups, this::turn).add();
    setRowFactory(_ -> new Row());
    addEventFilter(KeyEvent.KEY_PRESSED, this::pressed);
    setItems(groups.lines());
    groups.lines().addListener((ListChangeListener<ShelfLine>) _ -> selectAgain());
    getSelectionModel().selectedItemProperty().subscribe(this::selected);
    model.chosenProperty().subscribe(this::choose);
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
