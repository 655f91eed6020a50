package hankbook.desktop;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Predicate;
import javafx.application.Platform;
import javafx.scene.control.TableColumn;
import javafx.scene.control.TableColumn.SortType;
import javafx.scene.control.TableView;
import javafx.scene.input.MouseEvent;

/**
 * Remembers how a table was left: the order and widths of its columns, which of them are shown, and how it is sorted. Only what the user does is noted, not what the
 * table does to find room. Columns are remembered by their ids, which are the same in every language, or by their heads where they have none; a table whose columns
 * cannot be told apart so is left alone.
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
    List<String> names = table.getColumns().stream().map(TableMemory::name).toList();
    return names.size() > 1 && names.stream().distinct().count() == names.size();
  }

  private void note() {
    if (isNamed()) {
      remembered.put(key, new TableLook(table.getColumns().stream().map(TableMemory::look).toList(), table.getSortOrder().stream().map(TableMemory::sorted).toList()));
    }
  }

  private static TableLook.Column look(TableColumn<?, ?> column) {
    return new TableLook.Column(name(column), Math.max(1, (int) Math.round(column.getWidth())), GivingWay.isWanted(column));
  }

  private static TableLook.Sorted sorted(TableColumn<?, ?> column) {
    return new TableLook.Sorted(name(column), column.getSortType() == SortType.DESCENDING);
  }

  /** The id of a column that is called so, apart from those of the fields of the window. */
  static String id(String called) {
    return "column-" + called;
  }

  private static String name(TableColumn<?, ?> column) {
    return column.getId() == null ? column.getText() : column.getId();
  }

  /** Looks once went by heads, of which the ids are made. */
  private String named(String remembered) {
    String id = id(remembered.toLowerCase(Locale.ROOT).replace(".", "").replaceAll("[^a-z0-9]+", "-"));
    return column(column -> name(column).equals(remembered)).or(() -> column(column -> name(column).equals(id) || column.getText().equals(remembered)))
        .map(TableMemory::name).orElse(remembered);
  }

  private void put(TableLook remembered) {
    TableLook look = remembered.named(this::named);
    List<TableColumn<R, ?>> ordered = look.inOrder(table.getColumns(), TableMemory::name);
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
    return column(column -> name(column).equals(name));
  }

  private Optional<TableColumn<R, ?>> column(Predicate<TableColumn<R, ?>> alike) {
    return table.getColumns().stream().filter(alike).findFirst();
  }
}
