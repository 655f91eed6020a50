package hankbook.desktop;

import java.util.function.Consumer;
import javafx.scene.control.Label;
import javafx.scene.control.TableCell;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Region;
import javafx.scene.layout.StackPane;
import org.jspecify.annotations.Nullable;

/** What a line is of: a yarn in a colour with its swatch and the arrow that opens it, or one of its skeins. */
final class ShelfLineCell extends TableCell<ShelfLine, ShelfLine> {
  private final Region arrow = new Region();
  private final Swatch swatch = new Swatch(34, 22);
  private final Label yarn = new Label();
  private final Label colour = Labels.quiet("");
  private final Label code = new Label();
  private final Label place = Labels.quiet("");
  private final HBox group;
  private final HBox skein = new HBox(code, place);

  /** @param turned opens or closes a group */
  ShelfLineCell(Consumer<GroupRow> turned) {
    StackPane turn = new StackPane(arrow);
    arrow.getStyleClass().add("shelf-arrow");
    turn.getStyleClass().add("shelf-turn");
    turn.setOnMouseClicked(_ -> {
      if (getItem() instanceof ShelfLine.OfGroup(GroupRow row)) {
        turned.accept(row);
      }
    });
    group = new HBox(turn, swatch, yarn, colour);
    group.getStyleClass().add("shelf-group");
    skein.getStyleClass().add("shelf-skein");
    yarn.getStyleClass().add("shelf-yarn");
    colour.setWrapText(false);
    place.setWrapText(false);
  }

  @Override
  protected void updateItem(@Nullable ShelfLine line, boolean empty) {
    super.updateItem(line, empty);
    arrow.rotateProperty().unbind();
    if (empty || line == null) {
      setGraphic(null);
      return;
    }
    switch (line) {
      case ShelfLine.OfGroup(GroupRow row) -> show(row);
      case ShelfLine.OfSkein(SkeinRow row) -> show(row);
    }
  }

  private void show(GroupRow row) {
    swatch.show(row.hex(), row.yarn().colour());
    yarn.setText(row.yarn().yarn());
    colour.setText(row.yarn().colour());
    arrow.rotateProperty().bind(row.openProperty().map(open -> open ? 90 : 0));
    setGraphic(group);
  }

  private void show(SkeinRow row) {
    code.setText(row.code());
    place.setText(row.skein().location());
    setGraphic(skein);
  }
}
