package hankbook.desktop;

import hankbook.desktop.say.Say;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import javafx.scene.control.CheckMenuItem;
import javafx.scene.control.ContextMenu;
import javafx.scene.control.TableColumn;

/** Says which columns of a table are shown; it opens over the table, by the mouse or by the keyboard's menu key. */
final class ColumnMenu extends ContextMenu {
  private final Map<TableColumn<?, ?>, CheckMenuItem> items = new LinkedHashMap<>();
  private final Runnable changed;

  /**
   * @param columns those without a name are always shown
   * @param changed is run after a column was shown or put away
   */
  ColumnMenu(List<? extends TableColumn<?, ?>> columns, Runnable changed) {
    this.changed = changed;
    columns.stream().filter(column -> !column.getText().isBlank()).forEach(column -> items.put(column, item(column)));
    getItems().addAll(items.values());
    items.keySet().forEach(column -> column.visibleProperty().subscribe(this::look));
    setOnShowing(_ -> look());
  }

  private CheckMenuItem item(TableColumn<?, ?> column) {
    CheckMenuItem item = new CheckMenuItem();
    item.setOnAction(_ -> {
      GivingWay.want(column, item.isSelected());
      look();
      changed.run();
    });
    return item;
  }

  /** The last column that is shown cannot be put away. */
  private void look() {
    long seen = items.keySet().stream().filter(TableColumn::isVisible).count();
    items.forEach((column, item) -> {
      boolean wanted = GivingWay.isWanted(column);
      item.setSelected(wanted);
      item.setText(wanted && !column.isVisible() ? Say.text("Show “{0}” (no room for it now)", column.getText()) : Say.text("Show “{0}”", column.getText()));
      item.setDisable(column.isVisible() && seen == 1);
    });
  }
}
