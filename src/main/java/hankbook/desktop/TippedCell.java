package hankbook.desktop;

import javafx.scene.control.TableCell;
import javafx.scene.control.Tooltip;
import org.jspecify.annotations.Nullable;

/** A cell whose words may be longer than its column: a tip says them whole. */
final class TippedCell<S> extends TableCell<S, String> {
  private final Tooltip tip = new Tooltip();

  @Override
  protected void updateItem(@Nullable String item, boolean empty) {
    super.updateItem(item, empty);
    boolean nothing = empty || item == null || item.isEmpty();
    setText(nothing ? null : item);
    setTooltip(nothing ? null : tip);
    tip.setText(nothing ? "" : item);
  }
}
