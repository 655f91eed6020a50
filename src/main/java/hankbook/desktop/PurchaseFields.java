package hankbook.desktop;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;
import javafx.beans.property.SimpleStringProperty;
import javafx.beans.property.StringProperty;
import javafx.collections.FXCollections;
import javafx.collections.ObservableList;

/** The fields and lines in which a purchase is typed, with what is wrong with each. */
final class PurchaseFields {
  private final Function<String, String> why;
  private final Runnable changed;
  private final Map<String, StringProperty> fields = new LinkedHashMap<>();
  private final Map<String, ReadOnlyStringWrapper> messages = new LinkedHashMap<>();
  private final ObservableList<PurchaseLineForm> lines = FXCollections.observableArrayList();
  private final ObservableList<PurchaseLineForm> linesSeen = FXCollections.unmodifiableObservableList(lines);
  private final ReadOnlyObjectWrapper<Optional<PurchaseLineForm>> picking = new ReadOnlyObjectWrapper<>(Optional.empty());
  private List<SkeinToPay> candidates = List.of();
  private boolean filling;

  /**
   * @param why a skein of some code cannot be chosen
   * @param changed is run after every change
   */
  PurchaseFields(Function<String, String> why, Runnable changed) {
    this.why = why;
    this.changed = changed;
    PurchaseTyped.HEAD.forEach(key -> fields.put(key, new SimpleStringProperty("")));
    PurchaseTyped.HEAD.forEach(key -> messages.put(key, new ReadOnlyStringWrapper("")));
    fields.values().forEach(field -> field.subscribe((_, _) -> changed()));
  }

  /** What is typed in a field for all of the purchase. */
  StringProperty field(String key) {
    return known(fields, key);
  }

  /** What is wrong with it, or empty. */
  ReadOnlyStringProperty message(String key) {
    return known(messages, key).getReadOnlyProperty();
  }

  /** The lines, at least one. */
  ObservableList<PurchaseLineForm> lines() {
    return linesSeen;
  }

  /** The line whose skeins are being chosen. */
  ReadOnlyObjectProperty<Optional<PurchaseLineForm>> pickingProperty() {
    return picking.getReadOnlyProperty();
  }

  /** Opens the choice of skeins of a line, or closes it. */
  void pick(Optional<PurchaseLineForm> line) {
    picking.set(line);
  }

  /** Adds a line. */
  void addLine() {
    lines.add(line(PurchaseTyped.Line.BLANK));
    changed();
  }

  /** Takes a line out, unless it is the only one. */
  void remove(PurchaseLineForm line) {
    if (lines.size() > 1) {
      picking.set(picking.get().filter(open -> open != line));
      lines.remove(line);
      changed();
    }
  }

  /** All that is typed. */
  PurchaseTyped typed() {
    Map<String, String> head = new LinkedHashMap<>();
    fields.forEach((key, field) -> head.put(key, field.get()));
    return new PurchaseTyped(head, lines.stream().map(PurchaseLineForm::typed).toList());
  }

  /** Types it. */
  void fill(PurchaseTyped typed) {
    filling = true;
    fields.forEach((key, field) -> field.set(typed.text(key)));
    picking.set(Optional.empty());
    lines.setAll(typed.lines().stream().map(this::line).toList());
    filling = false;
    changed();
  }

  /** Says which skeins there are to choose among, and what is wrong with what is typed. */
  void say(List<SkeinToPay> free, PurchaseReading reading) {
    messages.forEach((key, message) -> message.set(reading.message(key)));
    for (int i = 0; i < lines.size(); i++) {
      lines.get(i).say(reading.message(PurchaseReading.key(i, "words")), reading.message(PurchaseReading.key(i, "price")));
    }
    Set<String> taken = new HashSet<>();
    lines.forEach(line -> taken.addAll(line.skeins()));
    List<SkeinToPay> now = new ArrayList<>(free);
    now.removeIf(skein -> taken.contains(skein.code()));
    if (!now.equals(candidates) || lines.stream().anyMatch(line -> line.picker().isWithoutOffer())) {
      candidates = List.copyOf(now);
      lines.forEach(line -> line.picker().offer(candidates));
    }
  }

  private PurchaseLineForm line(PurchaseTyped.Line typed) {
    return new PurchaseLineForm(typed, why, this::changed);
  }

  private void changed() {
    if (!filling) {
      changed.run();
    }
  }

  private static <T> T known(Map<String, T> byKey, String key) {
    T found = byKey.get(key);
    if (found == null) {
      throw new IllegalArgumentException("field is " + key + ", wanted one of " + byKey.keySet());
    }
    return found;
  }
}
