package hankbook.desktop;

import java.util.List;
import java.util.Optional;
import javafx.application.Platform;
import javafx.scene.control.TableColumn;
import javafx.scene.control.TableColumn.SortType;
import javafx.scene.control.TableView;
import javafx.scene.input.MouseEvent;

/**
 * Remembers how a table was left: the order and widths of its columns, which of them are shown, and how it is sorted. Only what the user does is noted, not what the
 * table does to find room. A table whose columns cannot be told apart by their names is left alone.
 */
final class TableMemory<R> {
  private final TableView<R> table;
  private final Remembered remembered;
  private final String key;

  /** @param table one with an id */
  TableMemory(TableView<R> table, Remembered remembered) {
    this.table = table;
    this.remembered = remembered;
    this.key = "table " + table.getId();
  }

  /** Restores the table, and notes from now on how it is left. */
  void begin() {
    if (isNamed()) {
      remembered.get(key, TableLook.class).ifPresent(this::put);
      table.setContextMenu(new ColumnMenu(table.getColumns(), this::note));
    }
    table.comparatorProperty().subscribe((_, _) -> note());
    table.addEventFilter(MouseEvent.MOUSE_RELEASED, released -> {
      if (Pressed.within("column-header-background", released.getTarget())) {
        Platform.runLater(this::note);
      }
    });
  }

  private boolean isNamed() {
    List<String> names = table.getColumns().stream().map(TableColumn::getText).toList();
    return names.size() > 1 && names.stream().distinct().count() == names.size();
  }

  private void note() {
    if (isNamed()) {
      remembered.put(key, new TableLook(table.getColumns().stream().map(TableMemory::look).toList(), table.getSortOrder().stream().map(TableMemory::sorted).toList()));
    }
  }

  private static TableLook.Column look(TableColumn<?, ?> column) {
    return new TableLook.Column(column.getText(), Math.max(1, (int) Math.round(column.getWidth())), GivingWay.isWanted(column));
  }

  private static TableLook.Sorted sorted(TableColumn<?, ?> column) {
    return new TableLook.Sorted(column.getText(), column.getSortType() == SortType.DESCENDING);
  }

  private void put(TableLook look) {
    List<TableColumn<R, ?>> ordered = look.inOrder(table.getColumns(), TableColumn::getText);
    if (!ordered.equals(table.getColumns())) {
      table.getColumns().setAll(ordered);
    }
    for (TableLook.Column left : look.columns()) {
      column(left.name()).ifPresent(column -> {
        column.setPrefWidth(left.width());
        GivingWay.want(column, left.shown());
      });
    }
    if (table.getColumns().stream().noneMatch(GivingWay::isWanted)) {
      table.getColumns().forEach(column -> GivingWay.want(column, true));
    }
    List<TableColumn<R, ?>> sorting = look.sort().stream().flatMap(sorted -> sorting(sorted).stream()).toList();
    table.getSortOrder().setAll(sorting);
  }

  private Optional<TableColumn<R, ?>> sorting(TableLook.Sorted sorted) {
    Optional<TableColumn<R, ?>> found = column(sorted.name()).filter(TableColumn::isSortable);
    found.ifPresent(column -> column.setSortType(sorted.descending() ? SortType.DESCENDING : SortType.ASCENDING));
    return found;
  }

  private Optional<TableColumn<R, ?>> column(String name) {
    return table.getColumns().stream().filter(column -> column.getText().equals(name)).findFirst();
  }
}
