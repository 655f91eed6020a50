package hankbook.desktop;

import hankbook.measure.Unreadable;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.Function;
import java.util.function.UnaryOperator;

/**
 * How a table was left.
 *
 * @param columns from left to right, also those that are not shown
 * @param sort by which columns it is sorted, the first one first
 */
record TableLook(List<Column> columns, List<Sorted> sort) {
  TableLook {
    columns = List.copyOf(columns);
    sort = List.copyOf(sort);
  }

  /**
   * One column.
   *
   * @param name its id, or what its head says
   * @param width more than 0
   * @param shown whether the user wants to see it
   */
  record Column(String name, int width, boolean shown) {
    Column {
      if (width <= 0) {
        throw new Unreadable(name + " " + width, "a width of more than nothing");
      }
    }
  }

  /** A column that the table is sorted by, and whether the greatest comes first. */
  record Sorted(String name, boolean descending) {}

  /** The same with its columns named otherwise. */
  TableLook named(UnaryOperator<String> otherwise) {
    return new TableLook(
        columns.stream().map(column -> new Column(otherwise.apply(column.name()), column.width(), column.shown())).toList(),
        sort.stream().map(sorted -> new Sorted(otherwise.apply(sorted.name()), sorted.descending())).toList());
  }

  /** The columns there are now, in the order in which they were left; those that are new keep their places. */
  <C> List<C> inOrder(List<C> now, Function<C, String> name) {
    List<String> known = columns.stream().map(Column::name).toList();
    List<C> ordered = new ArrayList<>(now.stream().filter(column -> known.contains(name.apply(column))).sorted(Comparator.comparingInt(column -> known.indexOf(name.apply(column)))).toList());
    for (int place = 0; place < now.size(); place++) {
      if (!known.contains(name.apply(now.get(place)))) {
        ordered.add(Math.min(place, ordered.size()), now.get(place));
      }
    }
    return ordered;
  }
}
