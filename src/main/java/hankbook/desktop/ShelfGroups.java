package hankbook.desktop;

import hankbook.studio.shelf.GroupOrder;
import hankbook.studio.shelf.SkeinGroup;
import hankbook.studio.shelf.SoughtSkein;
import hankbook.yarn.Colour;
import hankbook.yarn.YarnColour;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.SimpleObjectProperty;
import javafx.beans.property.SimpleStringProperty;
import javafx.beans.property.StringProperty;
import javafx.collections.FXCollections;
import javafx.collections.ObservableList;

/** The skeins that are shown, by yarn and colour, in an order, and which of them are opened to their skeins. */
final class ShelfGroups {
  /** So few skeins are shown at once when they were asked for. */
  private static final int FEW = 12;

  private final ObservableList<GroupRow> groups = FXCollections.observableArrayList();
  private final ObservableList<ShelfLine> lines = FXCollections.observableArrayList();
  private final ObjectProperty<GroupOrder> order = new SimpleObjectProperty<>(GroupOrder.NAME);
  private final StringProperty picked = new SimpleStringProperty("");
  private final Set<YarnColour> open = new HashSet<>();
  private List<SkeinRow> skeins = List.of();
  private boolean asked;

  ShelfGroups() {
    order.subscribe((_, _) -> arrange());
    picked.subscribe((_, _) -> arrange());
  }

  /** The yarns and colours. */
  ObservableList<GroupRow> groups() {
    return groups;
  }

  /** The same with the skeins of those that are open. */
  ObservableList<ShelfLine> lines() {
    return lines;
  }

  ObjectProperty<GroupOrder> orderProperty() {
    return order;
  }

  /** The colour that they are ordered by nearness to, as {@code #rrggbb}, or empty. */
  StringProperty pickedProperty() {
    return picked;
  }

  /**
   * Shows some skeins.
   *
   * @param answering whether they answer a question, so that a few are shown at once
   */
  void show(List<SkeinRow> shown, boolean answering) {
    skeins = List.copyOf(shown);
    asked = answering;
    arrange();
  }

  private void arrange() {
    Map<SoughtSkein, SkeinRow> rows = new HashMap<>();
    skeins.forEach(row -> rows.put(row.sought(), row));
    Optional<Colour> colour = Optional.of(picked.get()).filter(hex -> !hex.isEmpty()).map(Colour::ofHex);
    Optional<Colour> against = colour.filter(_ -> order.get() == GroupOrder.NEARNESS);
    List<SkeinGroup> sorted = order.get().sorted(SkeinGroup.of(skeins.stream().map(SkeinRow::sought).toList()), colour);
    groups.setAll(sorted.stream().map(group -> row(group, rows, against)).toList());
    lines.setAll(groups.stream().flatMap(this::lines).toList());
  }

  private GroupRow row(SkeinGroup group, Map<SoughtSkein, SkeinRow> rows, Optional<Colour> against) {
    GroupRow row = new GroupRow(group, group.skeins().stream().map(rows::get).toList(), against);
    row.openProperty().set(open.contains(row.yarn()) || (asked && skeins.size() <= FEW));
    return row;
  }

  private Stream<ShelfLine> lines(GroupRow row) {
    return Stream.concat(Stream.of(new ShelfLine.OfGroup(row)), row.openProperty().get() ? row.skeins().stream().map(ShelfLine.OfSkein::new) : Stream.of());
  }

  /** Shows the skeins of a group below it. */
  void open(GroupRow row) {
    open.add(row.yarn());
    if (!row.openProperty().get()) {
      row.openProperty().set(true);
      lines.addAll(lines.indexOf(new ShelfLine.OfGroup(row)) + 1, row.skeins().stream().map(ShelfLine.OfSkein::new).toList());
    }
  }

  /** Puts the skeins of a group away. */
  void close(GroupRow row) {
    open.remove(row.yarn());
    if (row.openProperty().get()) {
      row.openProperty().set(false);
      int first = lines.indexOf(new ShelfLine.OfGroup(row)) + 1;
      lines.remove(first, first + row.skeins().size());
    }
  }

  /** The group that a line belongs to. */
  GroupRow groupOf(ShelfLine line) {
    return switch (line) {
      case ShelfLine.OfGroup(GroupRow row) -> row;
      case ShelfLine.OfSkein(SkeinRow skein) -> groups.stream().filter(row -> row.yarn().equals(skein.skein().yarn())).findFirst().orElseThrow();
    };
  }
}
