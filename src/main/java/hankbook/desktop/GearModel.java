package hankbook.desktop;

import hankbook.desktop.say.Say;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;
import javafx.beans.property.SimpleStringProperty;
import javafx.beans.property.StringProperty;
import javafx.collections.FXCollections;
import javafx.collections.ObservableList;

/**
 * The looms of the studio, or its reeds: the list, and the form by which one is entered, changed or put away.
 *
 * @param <T> a loom or a reed
 */
final class GearModel<T> {
  private final GearKind<T> kind;
  private final Work work;
  private final Status status;
  private final Runnable after;
  private final Latest latest = new Latest();
  private final Act enter;
  private final Act putAway;
  private final Act takeOver;
  private final Map<String, StringProperty> fields = new LinkedHashMap<>();
  private final Map<String, ReadOnlyStringWrapper> messages = new LinkedHashMap<>();
  private final ReadOnlyStringWrapper enterWord;
  private final ObservableList<GearRow<T>> rows = FXCollections.observableArrayList();
  private final ReadOnlyObjectWrapper<Optional<GearRow<T>>> chosen = new ReadOnlyObjectWrapper<>(Optional.empty());
  private boolean showing;

  /** @param after what follows once the list is another: plans are held against it */
  GearModel(GearKind<T> kind, Work work, Status status, Runnable after) {
    this.kind = kind;
    this.work = work;
    this.status = status;
    this.after = after;
    enter = new Act(work);
    putAway = new Act(work);
    takeOver = new Act(work);
    enterWord = new ReadOnlyStringWrapper(Say.text("Enter {0}", kind.words()));
    kind.fields().forEach(field -> fields.put(field.key(), new SimpleStringProperty("")));
    kind.fields().forEach(field -> messages.put(field.key(), new ReadOnlyStringWrapper("")));
    fields.values().forEach(field -> field.subscribe(_ -> changed()));
  }

  GearKind<T> kind() {
    return kind;
  }

  ObservableList<GearRow<T>> rows() {
    return FXCollections.unmodifiableObservableList(rows);
  }

  ReadOnlyObjectProperty<Optional<GearRow<T>>> chosenProperty() {
    return chosen.getReadOnlyProperty();
  }

  /** What is typed in a field. */
  StringProperty field(String key) {
    return known(fields, key);
  }

  /** What is wrong with it, or empty. */
  ReadOnlyStringProperty message(String key) {
    return known(messages, key).getReadOnlyProperty();
  }

  /** What entering does: one is entered, or takes the place of that of its name. */
  ReadOnlyStringProperty enterWordProperty() {
    return enterWord.getReadOnlyProperty();
  }

  Act enterAct() {
    return enter;
  }

  Act putAwayAct() {
    return putAway;
  }

  /** Asks the ledger anew; what is typed stays. */
  void refresh() {
    work.run(kind::rows, latest.only(this::show), status::wrong);
  }

  private void show(List<GearRow<T>> found) {
    Optional<String> name = chosen.get().map(GearRow::name);
    showing = true;
    rows.setAll(found);
    showing = false;
    chosen.set(name.flatMap(this::named));
    judge();
  }

  private Optional<GearRow<T>> named(String name) {
    return rows.stream().filter(row -> row.name().equals(name)).findFirst();
  }

  /** Chooses one, whose fields can be changed then. */
  void choose(Optional<GearRow<T>> row) {
    if (!showing && !row.equals(chosen.get())) {
      chosen.set(row);
      row.ifPresent(now -> fields.forEach((key, field) -> field.set(now.text(key))));
      judge();
    }
  }

  /** Empties the form for another one. */
  void another() {
    chosen.set(Optional.empty());
    fields.values().forEach(field -> field.set(""));
    judge();
  }

  /** What is typed and stands in no list, by the keys of the fields; empty where nothing is. */
  Map<String, String> typed() {
    Map<String, String> texts = texts();
    boolean asListed = chosen.get().filter(row -> texts.entrySet().stream().allMatch(field -> field.getValue().equals(row.text(field.getKey())))).isPresent();
    texts.values().removeIf(String::isBlank);
    return asListed ? Map.of() : Collections.unmodifiableMap(texts);
  }

  /** Types texts again that were put by. */
  void type(Map<String, String> texts) {
    fields.forEach((key, field) -> field.set(texts.getOrDefault(key, "")));
  }

  private Map<String, String> texts() {
    Map<String, String> texts = new LinkedHashMap<>();
    fields.forEach((key, field) -> texts.put(key, field.get()));
    return texts;
  }

  /** Enters what is typed, in the place of that of its name where there is one. */
  void enter() {
    Optional<T> read = judge();
    if (enter.isPossible()) {
      T gear = read.orElseThrow();
      String name = kind.texts(gear).getOrDefault("name", "");
      boolean replace = named(name).isPresent();
      enter.attempt(_ -> kind.add(gear, replace), this::another, () -> done(replace
          ? Say.text("Changed the {0} {1}.", kind.words(), name)
          : Say.text("Entered the {0} {1}.", kind.words(), name)), status::wrong);
    }
  }

  /** Takes the chosen one off the list. */
  void putAway() {
    if (putAway.isPossible()) {
      String name = chosen.get().orElseThrow().name();
      putAway.attempt(_ -> kind.putAway(name), this::another, () -> done(Say.text("Put the {0} {1} away.", kind.words(), name)), status::wrong);
    }
  }

  /** Changes one to what finished plans say of it. */
  void takeOver(GearRow<T> row) {
    row.asLearnt().ifPresent(as -> takeOver.attempt(_ -> kind.add(as.gear(), true), () -> {}, () -> takenOver(row, as.gear()), status::wrong));
  }

  /** What is typed in its form and was not changed follows. */
  private void takenOver(GearRow<T> row, T gear) {
    if (chosen.get().filter(now -> now.name().equals(row.name())).isPresent()) {
      kind.texts(gear).forEach((key, text) -> Optional.of(field(key)).filter(field -> field.get().equals(row.text(key))).ifPresent(field -> field.set(text)));
    }
    done(Say.text("Changed the {0} {1} to what was learnt.", kind.words(), row.name()));
  }

  private void done(String what) {
    status.done(what);
    refresh();
    after.run();
  }

  private void changed() {
    enter.renew();
    judge();
  }

  private Optional<T> judge() {
    GearReading reading = new GearReading(texts());
    Optional<T> read = kind.read(reading);
    messages.forEach((key, message) -> message.set(reading.message(key)));
    Optional<GearRow<T>> there = read.map(kind::texts).flatMap(written -> named(written.getOrDefault("name", "")));
    enterWord.set(there.isPresent() ? Say.text("Change {0}", kind.words()) : Say.text("Enter {0}", kind.words()));
    boolean same = there.filter(row -> row.gear().equals(read.orElseThrow())).isPresent();
    enter.judge(same ? Say.text("So it stands in the list.") : reading.whyNot());
    putAway.judge(chosen.get().isPresent() ? "" : Say.text("Choose one in the list."));
    return read;
  }

  private static <V> V known(Map<String, V> byKey, String key) {
    V found = byKey.get(key);
    if (found == null) {
      throw new IllegalArgumentException("field is " + key + ", wanted one of " + byKey.keySet());
    }
    return found;
  }
}
