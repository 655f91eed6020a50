package hankbook.desktop;

import javafx.scene.control.ListCell;
import org.jspecify.annotations.Nullable;

/** A line of a list, over as many lines as it needs. */
final class WrappedCell extends ListCell<String> {
  WrappedCell() {
    setWrapText(true);
    setPrefWidth(0);
  }

  @Override
  protected void updateItem(@Nullable String item, boolean empty) {
    super.updateItem(item, empty);
    setText(empty ? null : item);
  }
}
