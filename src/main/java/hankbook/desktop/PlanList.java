package hankbook.desktop;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;
import javafx.beans.property.BooleanProperty;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.ReadOnlyBooleanProperty;
import javafx.beans.property.ReadOnlyBooleanWrapper;
import javafx.beans.property.ReadOnlyIntegerProperty;
import javafx.beans.property.ReadOnlyIntegerWrapper;
import javafx.beans.property.SimpleBooleanProperty;
import javafx.beans.property.SimpleObjectProperty;
import javafx.beans.property.SimpleStringProperty;
import javafx.beans.property.StringProperty;
import javafx.collections.FXCollections;
import javafx.collections.ObservableList;

/** The plans as they are listed: those that hold the words searched for, in the order that was chosen; squared ones last, and only where they are asked for. */
final class PlanList {
  private static final Comparator<PlanRow> BY_NAME = Comparator.comparing(PlanRow::name, String.CASE_INSENSITIVE_ORDER).thenComparing(PlanRow::name);

  private final ObservableList<PlanRow> rows = FXCollections.observableArrayList();
  private final ObservableList<PlanRow> rowsSeen = FXCollections.unmodifiableObservableList(rows);
  private final ObservableList<PlanRow> shown = FXCollections.observableArrayList();
  private final ObservableList<PlanRow> shownSeen = FXCollections.unmodifiableObservableList(shown);
  private final StringProperty words = new SimpleStringProperty("");
  private final ObjectProperty<PlanOrdering> order = new SimpleObjectProperty<>(PlanOrdering.BY_NAME);
  private final BooleanProperty withSquared = new SimpleBooleanProperty(false);
  private final ReadOnlyIntegerWrapper squared = new ReadOnlyIntegerWrapper();
  private final ReadOnlyBooleanWrapper listing = new ReadOnlyBooleanWrapper(false);
  private Map<String, Instant> keptAt = Map.of();

  PlanList() {
    words.subscribe(_ -> again());
    order.subscribe(_ -> again());
    withSquared.subscribe(_ -> again());
  }

  /** Every plan, by name. */
  ObservableList<PlanRow> rows() {
    return rowsSeen;
  }

  /** Those that are listed. */
  ObservableList<PlanRow> shown() {
    return shownSeen;
  }

  /** Whether rows are coming and going just now, so that what a list then has selected was chosen by nobody. */
  ReadOnlyBooleanProperty listingProperty() {
    return listing.getReadOnlyProperty();
  }

  /** The words searched for, each of which is in a plan's name, how it stands, how far it has come, or its yarns. */
  StringProperty wordsProperty() {
    return words;
  }

  ObjectProperty<PlanOrdering> orderProperty() {
    return order;
  }

  /** Whether squared plans are listed too; those that are searched for always are. */
  BooleanProperty withSquaredProperty() {
    return withSquared;
  }

  /** How many plans are squared. */
  ReadOnlyIntegerProperty squaredProperty() {
    return squared.getReadOnlyProperty();
  }

  List<String> names() {
    return rows.stream().map(PlanRow::name).toList();
  }

  Optional<PlanRow> row(String name) {
    return rows.stream().filter(row -> row.name().equals(name)).findFirst();
  }

  /** Lists a plan that may not be listed yet. */
  void add(String name) {
    if (row(name).isEmpty()) {
      rows.add(new PlanRow(name));
      rows.sort(BY_NAME);
      again();
    }
  }

  /** Lists the plans of these names, and those that are to stay. */
  void show(List<String> names, Predicate<PlanRow> stay) {
    rows.removeIf(row -> !names.contains(row.name()) && !stay.test(row));
    names.stream().filter(name -> row(name).isEmpty()).forEach(name -> rows.add(new PlanRow(name)));
    rows.sort(BY_NAME);
    again();
  }

  /** Says when each was last changed. */
  void keptAt(Map<String, Instant> found) {
    keptAt = found;
    again();
  }

  /** Lists anew what is listed, where that or its order has changed. */
  void again() {
    squared.set(Math.toIntExact(rows.stream().filter(PlanList::isOver).count()));
    Predicate<String> wanted = PlainWords.all(words.get());
    boolean searched = !words.get().isBlank();
    List<PlanRow> now = new ArrayList<>(rows);
    now.removeIf(row -> searched ? !wanted.test(text(row)) : isOver(row) && !withSquared.get());
    now.sort(Comparator.comparing(PlanList::isOver).thenComparing(comparator()).thenComparing(BY_NAME));
    if (!now.equals(shown)) {
      listing.set(true);
      shown.setAll(now);
      listing.set(false);
    }
  }

  private Comparator<PlanRow> comparator() {
    return switch (order.get()) {
      case BY_NAME -> BY_NAME;
      case BY_VERDICT -> Comparator.comparing((PlanRow row) -> row.standingProperty().get()).reversed();
      case BY_DATE -> Comparator.comparing((PlanRow row) -> keptAt.getOrDefault(row.name(), Instant.MAX)).reversed();
    };
  }

  private static boolean isOver(PlanRow row) {
    return row.lifeProperty().get().isOver();
  }

  private static String text(PlanRow row) {
    String stands = isOver(row) ? "" : row.standingProperty().get().word();
    return PlainWords.of(row.name(), stands, row.lifeProperty().get().word(), String.join("\n", row.yarns()));
  }
}
