package hankbook.desktop;

import javafx.scene.control.TableCell;
import org.jspecify.annotations.Nullable;

/** How far off the day is on which a skein is expected; what is late says so by its word first. */
final class LateCell extends TableCell<ExpectedRow, ExpectedRow> {
  private static final String LATE = "late";

  @Override
  protected void updateItem(@Nullable ExpectedRow row, boolean empty) {
    super.updateItem(row, empty);
    getStyleClass().remove(LATE);
    setText(empty || row == null ? null : row.state());
    if (!empty && row != null && row.isLate()) {
      getStyleClass().add(LATE);
    }
  }
}
