package hankbook.desktop;

import javafx.scene.control.TableCell;
import org.jspecify.annotations.Nullable;

/** How a length is known: its mark and its word. */
final class KnownByCell extends TableCell<SkeinRow, KnownBy> {
  private final KnownByMark mark = new KnownByMark();

  @Override
  protected void updateItem(@Nullable KnownBy known, boolean empty) {
    super.updateItem(known, empty);
    if (empty || known == null) {
      setGraphic(null);
      setText(null);
    } else {
      mark.show(known);
      setGraphic(mark);
      setText(known.toString());
    }
  }
}
