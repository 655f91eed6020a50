package hankbook.desktop;

import hankbook.studio.Journal;
import hankbook.studio.Studio;
import java.util.List;
import java.util.Optional;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.collections.FXCollections;
import javafx.collections.ObservableList;

/** The page of the chosen skein: what it holds, and what happened to it. */
public final class SkeinPageModel {
  private final Studio studio;
  private final Work work;
  private final Status status;
  private final Latest latest = new Latest();
  private final ReadOnlyObjectWrapper<Optional<SkeinRow>> skein = new ReadOnlyObjectWrapper<>(Optional.empty());
  private final ObservableList<SkeinEvent> history = FXCollections.observableArrayList();
  private final ObservableList<SkeinEvent> historySeen = FXCollections.unmodifiableObservableList(history);
  private volatile String asked = "";

  public SkeinPageModel(Studio studio, Work work, Status status) {
    this.studio = studio;
    this.work = work;
    this.status = status;
  }

  ReadOnlyObjectProperty<Optional<SkeinRow>> skeinProperty() {
    return skein.getReadOnlyProperty();
  }

  /** What happened to it, newest first. */
  ObservableList<SkeinEvent> history() {
    return historySeen;
  }

  /** Turns to a skein, or to none. */
  void turnTo(Optional<SkeinRow> row) {
    boolean another = !row.map(SkeinRow::code).equals(skein.get().map(SkeinRow::code));
    skein.set(row);
    if (another) {
      history.clear();
    }
    asked = row.map(SkeinRow::code).orElse("");
    row.ifPresent(chosen -> work.run(() -> events(chosen.code()), latest.only(history::setAll), status::wrong));
  }

  /** Nothing for a skein that was left again before its turn came: a key held down passes many. */
  private List<SkeinEvent> events(String code) {
    if (!code.equals(asked)) {
      return List.of();
    }
    return new Journal(studio).ofSkein(code).stream().map(entry -> SkeinEvent.of(entry, code)).toList();
  }
}
