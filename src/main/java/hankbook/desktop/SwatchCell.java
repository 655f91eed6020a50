package hankbook.desktop;

import javafx.scene.control.TableCell;
import org.jspecify.annotations.Nullable;

/** A skein's colour, woven. */
final class SwatchCell extends TableCell<SkeinRow, SkeinRow> {
  private final Swatch swatch = new Swatch(34, 22);

  SwatchCell() {
    getStyleClass().add("swatch-cell");
  }

  @Override
  protected void updateItem(@Nullable SkeinRow row, boolean empty) {
    super.updateItem(row, empty);
    if (empty || row == null) {
      setGraphic(null);
    } else {
      swatch.show(row.skein().hex(), row.skein().yarn().colour());
      setGraphic(swatch);
    }
  }
}
