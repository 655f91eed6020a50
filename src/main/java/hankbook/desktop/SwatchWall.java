package hankbook.desktop;

import hankbook.desktop.say.Say;
import hankbook.studio.shelf.WallLayout;
import hankbook.yarn.YarnColour;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.Consumer;
import java.util.stream.IntStream;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;
import javafx.collections.ListChangeListener;
import javafx.scene.control.Tooltip;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.Pane;

/** All yarns and colours hung side by side, each as large as there is of it. The arrow keys go from one to the next, Enter opens it. */
final class SwatchWall extends Pane {
  private final ShelfGroups groups;
  private final Consumer<GroupRow> opening;
  private final Tooltip tip = new Tooltip();
  private final ReadOnlyStringWrapper missing = new ReadOnlyStringWrapper("");
  private List<WallTile> tiles = List.of();
  private Optional<WallLayout> hung = Optional.empty();
  private Optional<YarnColour> current = Optional.empty();

  /** @param opening shows a group's skeins */
  SwatchWall(ShelfGroups groups, Consumer<GroupRow> opening) {
    this.groups = groups;
    this.opening = opening;
    setId("wall");
    getStyleClass().add("wall");
    setMinSize(0, 0);
    setAccessibleText(Say.text("Wall of swatches"));
    groups.groups().addListener((ListChangeListener<GroupRow>) _ -> hang());
    visibleProperty().subscribe(_ -> hang());
    addEventHandler(KeyEvent.KEY_PRESSED, this::pressed);
  }

  /** What does not hang here, or empty. */
  ReadOnlyStringProperty missingProperty() {
    return missing.getReadOnlyProperty();
  }

  /** Puts the keyboard on the wall. */
  void enter() {
    index().ifPresent(at -> tiles.get(at).requestFocus());
  }

  /** Only while it is seen. */
  private void hang() {
    List<GroupRow> rows = isVisible() ? groups.groups().stream().filter(row -> row.held().length().isPositive()).toList() : List.of();
    tiles = rows.stream().map(this::tile).toList();
    hung = Optional.empty();
    getChildren().setAll(tiles);
    letIn();
    int left = isVisible() ? groups.groups().size() - rows.size() : 0;
    missing.set(left == 0 ? "" : Say.count(left, "{0} yarn whose length is not known does not hang here.", "{0} yarns whose length is not known do not hang here."));
  }

  private WallTile tile(GroupRow row) {
    WallTile tile = new WallTile(row);
    tile.setOnMouseEntered(_ -> tip.setText(row.words()));
    tile.setOnMouseClicked(_ -> opening.accept(row));
    tile.focusedProperty().subscribe(focused -> {
      if (focused) {
        current = Optional.of(row.yarn());
        letIn();
      }
    });
    Tooltip.install(tile, tip);
    return tile;
  }

  /** The keyboard comes in at one tile only. */
  private void letIn() {
    OptionalInt at = index();
    IntStream.range(0, tiles.size()).forEach(tile -> tiles.get(tile).setFocusTraversable(at.isPresent() && at.getAsInt() == tile));
  }

  private OptionalInt index() {
    OptionalInt same = IntStream.range(0, tiles.size()).filter(tile -> current.filter(tiles.get(tile).row().yarn()::equals).isPresent()).findFirst();
    return same.isPresent() || tiles.isEmpty() ? same : OptionalInt.of(0);
  }

  private void pressed(KeyEvent key) {
    OptionalInt at = index();
    if (at.isEmpty() || hung.isEmpty() || key.isShortcutDown() || key.isAltDown()) {
      return;
    }
    switch (key.getCode()) {
      case LEFT -> go(at.getAsInt(), WallLayout.Way.LEFT);
      case RIGHT -> go(at.getAsInt(), WallLayout.Way.RIGHT);
      case UP -> go(at.getAsInt(), WallLayout.Way.UP);
      case DOWN -> go(at.getAsInt(), WallLayout.Way.DOWN);
      case HOME -> tiles.getFirst().requestFocus();
      case END -> tiles.getLast().requestFocus();
      case ENTER, SPACE -> opening.accept(tiles.get(at.getAsInt()).row());
      default -> {
        return;
      }
    }
    key.consume();
  }

  private void go(int from, WallLayout.Way way) {
    hung.ifPresent(wall -> wall.next(from, way).ifPresent(to -> tiles.get(to).requestFocus()));
  }

  @Override
  protected void layoutChildren() {
    if (!tiles.isEmpty() && getWidth() > 0 && getHeight() > 0) {
      WallLayout wall = WallLayout.of(tiles.stream().map(tile -> tile.row().held().length().tenthsOfMillimetre()).toList(), getWidth(), getHeight());
      hung = Optional.of(wall);
      for (int i = 0; i < tiles.size(); i++) {
        WallLayout.Tile tile = wall.tiles().get(i);
        double x = snapPositionX(tile.x());
        double y = snapPositionY(tile.y());
        tiles.get(i).resizeRelocate(x, y, snapPositionX(tile.x() + tile.width()) - x, snapPositionY(tile.y() + tile.height()) - y);
      }
    }
  }
}
