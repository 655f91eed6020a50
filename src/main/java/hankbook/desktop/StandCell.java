package hankbook.desktop;

import hankbook.measure.Length;
import javafx.beans.value.ObservableValue;
import javafx.scene.AccessibleRole;
import javafx.scene.control.TableCell;
import javafx.scene.control.Tooltip;
import org.jspecify.annotations.Nullable;

/** Where the yarn of a line is, as a bar; in words for whoever points at it or has it read. */
final class StandCell extends TableCell<ShelfLine, ShelfLine> {
  private final StandBar bar = new StandBar();
  private final ObservableValue<Length> most;

  StandCell(ObservableValue<Length> most) {
    this.most = most;
    bar.setAccessibleRole(AccessibleRole.IMAGE_VIEW);
    bar.prefWidthProperty().bind(widthProperty().subtract(18));
    bar.prefHeightProperty().bind(heightProperty());
  }

  @Override
  protected void updateItem(@Nullable ShelfLine line, boolean empty) {
    super.updateItem(line, empty);
    if (empty || line == null) {
      setGraphic(null);
      setTooltip(null);
    } else {
      bar.show(line, most.getValue());
      bar.setAccessibleText(line.standing());
      setGraphic(bar);
      setTooltip(line.standing().isEmpty() ? null : new Tooltip(line.standing()));
    }
  }
}
