package hankbook.desktop;

import hankbook.desktop.say.Say;
import hankbook.measure.Length;
import hankbook.studio.Settings;
import hankbook.studio.Shelf;
import hankbook.studio.ShelfSkein;
import hankbook.studio.Studio;
import hankbook.studio.shelf.ShelfQuestion;
import hankbook.yarn.Doubts;
import hankbook.yarn.Skein;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;
import javafx.beans.property.SimpleStringProperty;
import javafx.beans.property.StringProperty;
import javafx.collections.FXCollections;
import javafx.collections.ObservableList;
import javafx.collections.transformation.FilteredList;
import javafx.collections.transformation.SortedList;

/** The skeins on the shelf, those that answer to the search, and the one that is chosen. */
public final class ShelfModel {
  private final Studio studio;
  private final Work work;
  private final Status status;
  private final Latest latest = new Latest();
  private final ObservableList<SkeinRow> all = FXCollections.observableArrayList();
  private final SortedList<SkeinRow> sorted = new SortedList<>(all);
  private final FilteredList<SkeinRow> shown = new FilteredList<>(sorted);
  private final StringProperty search = new SimpleStringProperty("");
  private final ReadOnlyStringWrapper summary = new ReadOnlyStringWrapper("");
  private final ReadOnlyObjectWrapper<Optional<SkeinRow>> chosen = new ReadOnlyObjectWrapper<>(Optional.empty());
  private final ReadOnlyStringWrapper faults = new ReadOnlyStringWrapper("");
  private final ReadOnlyStringWrapper nothing = new ReadOnlyStringWrapper("");
  private final ShelfGroups groups = new ShelfGroups();
  private ShelfQuestion question = ShelfQuestion.NONE;
  private boolean beingShown;
  private boolean read;
  private Optional<String> wanted = Optional.empty();
  private List<Skein> ever = List.of();
  private Set<String> takenBack = Set.of();
  private Doubts doubts = Doubts.DEFAULT;

  /** Every skein there ever was, those that may come once more, those that are left as they are shown, and how far they are trusted; it is made away from the screen. */
  private record Stock(List<Skein> ever, Set<String> takenBack, List<SkeinRow> rows, Doubts doubts) {}

  public ShelfModel(Studio studio, Work work, Status status) {
    this.studio = studio;
    this.work = work;
    this.status = status;
    search.subscribe(this::ask);
  }

  ObservableList<SkeinRow> shown() {
    return shown;
  }

  /** The same by yarn and colour. */
  ShelfGroups groups() {
    return groups;
  }

  /** What of the question is not understood, or empty. */
  ReadOnlyStringProperty faultsProperty() {
    return faults.getReadOnlyProperty();
  }

  /** Why nothing is shown; empty while something is. */
  ReadOnlyStringProperty nothingProperty() {
    return nothing.getReadOnlyProperty();
  }

  /** Whether there is no skein at all, whatever is asked. */
  boolean isBlank() {
    return all.isEmpty();
  }

  /** Every skein there ever was, used up or not. */
  List<Skein> everySkein() {
    return ever;
  }

  /** Whether a skein was written down and may come once more, since its receipts were all taken back. */
  boolean isTakenBack(String code) {
    return takenBack.contains(code);
  }

  /** How far each way of knowing a length is trusted. */
  Doubts doubts() {
    return doubts;
  }

  /** The order the table wants. */
  ObjectProperty<Comparator<? super SkeinRow>> orderProperty() {
    return sorted.comparatorProperty();
  }

  StringProperty searchProperty() {
    return search;
  }

  /** How many skeins are shown and how much of them is free. */
  ReadOnlyStringProperty summaryProperty() {
    return summary.getReadOnlyProperty();
  }

  ReadOnlyObjectProperty<Optional<SkeinRow>> chosenProperty() {
    return chosen.getReadOnlyProperty();
  }

  /** Whether the choice changes only since the shelf was read anew: a table then chooses a row for a moment by itself. */
  boolean isBeingShown() {
    return beingShown;
  }

  /** Chooses a skein, or none. */
  void choose(Optional<SkeinRow> row) {
    chosen.set(row);
  }

  /** Asks the ledger anew; the choice stays with the same skein. */
  public void refresh() {
    work.run(this::stock, latest.only(this::show), latest.also(status::wrong));
  }

  /** Turns to the skein with a code; the search is left where it would hide it. */
  void open(String code) {
    wanted = Optional.of(code);
    refresh();
  }

  private void turnTo(String code) {
    Optional<SkeinRow> row = row(code);
    if (row.isEmpty()) {
      status.wrong(Say.text("Nothing is left of {0}, so it is not on the shelf any more. The journal has all that was done with it.", code));
    } else if (!shown.contains(row.get())) {
      search.set("");
    }
    choose(row);
  }

  private Stock stock() {
    List<ShelfSkein> skeins = new Shelf(studio).everySkein();
    Doubts trusted = new Settings(studio).judgement().doubts();
    List<SkeinRow> rows = skeins.stream().filter(skein -> !skein.isUsedUp()).map(skein -> SkeinRow.of(skein, trusted)).sorted(SkeinRow.ORDER).toList();
    return new Stock(skeins.stream().map(ShelfSkein::skein).toList(), new Shelf(studio).takenBack(), rows, trusted);
  }

  private void show(Stock stock) {
    Optional<String> code = chosen.get().map(SkeinRow::code);
    beingShown = true;
    read = true;
    doubts = stock.doubts();
    ever = stock.ever();
    takenBack = stock.takenBack();
    all.setAll(stock.rows());
    filter();
    choose(code.flatMap(this::row));
    beingShown = false;
    Optional<String> turnedTo = wanted;
    wanted = Optional.empty();
    turnedTo.ifPresent(this::turnTo);
  }

  private Optional<SkeinRow> row(String code) {
    return all.stream().filter(row -> row.code().equals(code)).findFirst();
  }

  private void ask(String asked) {
    question = ShelfQuestion.of(asked, ShelfVocabulary.now());
    filter();
  }

  private void filter() {
    shown.setPredicate(row -> question.holds(row.sought()));
    groups.show(sorted(shown), !question.clauses().isEmpty());
    faults.set(ShelfAsking.faults(question));
    nothing.set(read && shown.isEmpty() ? nothing() : "");
    summary.set(read ? summary() : "");
  }

  private String summary() {
    Length free = shown.stream().map(row -> row.free().length()).reduce(Length.ZERO, Length::plus);
    return shown.size() == all.size()
        ? Say.count(all.size(), "{0} skein, {1} free", "{0} skeins, {1} free", Wording.yarn(free))
        : Say.count(all.size(), "{1} of {0} skein, {2} free", "{1} of {0} skeins, {2} free", shown.size(), Wording.yarn(free));
  }

  /** In the groups the skeins stand by code, however the table is sorted. */
  private static List<SkeinRow> sorted(List<SkeinRow> rows) {
    return rows.stream().sorted(SkeinRow.ORDER).toList();
  }

  private String nothing() {
    return all.isEmpty() ? Say.text("Nothing is on the shelf yet.") : ShelfAsking.nothing(question, all.stream().map(SkeinRow::sought).toList());
  }
}
