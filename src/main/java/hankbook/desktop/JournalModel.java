package hankbook.desktop;

import hankbook.studio.Journal;
import hankbook.studio.JournalEntry;
import hankbook.studio.Studio;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;
import javafx.beans.property.SimpleStringProperty;
import javafx.beans.property.StringProperty;
import javafx.collections.FXCollections;
import javafx.collections.ObservableList;
import javafx.collections.transformation.FilteredList;

/** Every entry, newest first, those that answer to the search, and the one that is chosen. */
public final class JournalModel {
  private final Studio studio;
  private final Work work;
  private final Status status;
  private final Latest latest = new Latest();
  private final ObservableList<JournalRow> all = FXCollections.observableArrayList();
  private final FilteredList<JournalRow> shown = new FilteredList<>(all);
  private final StringProperty search = new SimpleStringProperty("");
  private final ReadOnlyStringWrapper summary = new ReadOnlyStringWrapper("");
  private final ReadOnlyObjectWrapper<Optional<JournalRow>> chosen = new ReadOnlyObjectWrapper<>(Optional.empty());

  public JournalModel(Studio studio, Work work, Status status) {
    this.studio = studio;
    this.work = work;
    this.status = status;
    search.subscribe(this::filter);
  }

  ObservableList<JournalRow> shown() {
    return shown;
  }

  StringProperty searchProperty() {
    return search;
  }

  ReadOnlyStringProperty summaryProperty() {
    return summary.getReadOnlyProperty();
  }

  ReadOnlyObjectProperty<Optional<JournalRow>> chosenProperty() {
    return chosen.getReadOnlyProperty();
  }

  /** Chooses an entry, or none. */
  void choose(Optional<JournalRow> row) {
    chosen.set(row);
  }

  /** Asks the ledger anew; the choice stays with the same entry. */
  public void refresh() {
    work.run(() -> rows(new Journal(studio).newestFirst()), latest.only(this::show), status::wrong);
  }

  private static List<JournalRow> rows(List<JournalEntry> entries) {
    Map<UUID, Long> numbers = entries.stream().collect(Collectors.toMap(entry -> entry.chained().entry().id(), entry -> entry.chained().number()));
    return entries.stream().map(entry -> row(entry, numbers)).toList();
  }

  private static JournalRow row(JournalEntry entry, Map<UUID, Long> numbers) {
    return JournalRow.of(entry, entry.reversedBy().map(numbers::get), entry.chained().entry().reverses().map(numbers::get));
  }

  private void show(List<JournalRow> rows) {
    Optional<UUID> id = chosen.get().map(JournalRow::id);
    all.setAll(rows);
    summarise();
    choose(id.flatMap(same -> all.stream().filter(row -> row.id().equals(same)).findFirst()));
  }

  private void filter(String asked) {
    Predicate<String> matches = PlainWords.all(asked);
    shown.setPredicate(row -> matches.test(row.searched()));
    summarise();
  }

  private void summarise() {
    String among = shown.size() == all.size() ? "" : " of " + all.size();
    summary.set(shown.size() + among + (all.size() == 1 ? " entry" : " entries"));
  }
}
