package hankbook.desktop;

import hankbook.desktop.say.Language;
import hankbook.desktop.say.Say;
import hankbook.studio.Journal;
import hankbook.studio.JournalSearch;
import hankbook.studio.NumberedEntry;
import hankbook.studio.Studio;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicLong;
import java.util.stream.LongStream;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;
import javafx.beans.property.SimpleStringProperty;
import javafx.beans.property.StringProperty;
import javafx.util.Subscription;

/**
 * Every entry, newest first, those that answer to the search, and the one that is chosen. Only what is looked at is read, and after that only what is new; the
 * search goes on beside it and shows what it found so far.
 */
public final class JournalModel {
  /** So many new entries are looked through for what they take back; after more than that, everything that is kept is read anew. */
  private static final long MANY = 500;

  private final Studio studio;
  private final Work work;
  private final Work searching;
  private final Status status;
  private final JournalPages pages;
  private final Latest latest = new Latest();
  private final AtomicLong searches = new AtomicLong();
  private final StringProperty search = new SimpleStringProperty("");
  private final ReadOnlyStringWrapper summary = new ReadOnlyStringWrapper("");
  private final ReadOnlyObjectWrapper<Optional<JournalRow>> chosen = new ReadOnlyObjectWrapper<>(Optional.empty());
  private final ReadOnlyObjectWrapper<JournalLines> shown;
  private Language language = Say.language();
  private JournalSearch index;
  private Optional<JournalLine> chosenLine = Optional.empty();
  private Subscription following = Subscription.EMPTY;
  private long last;
  private boolean looking;

  /** @param searching where the search goes on, beside what else asks the ledger */
  public JournalModel(Studio studio, Work work, Work searching, Status status) {
    this.studio = studio;
    this.work = work;
    this.searching = new Work(new InOrder(searching.away()), searching.here());
    this.status = status;
    pages = new JournalPages(studio, work, status);
    index = new JournalSearch(studio, JournalRow::spoken);
    shown = new ReadOnlyObjectWrapper<>(JournalLines.all(0, pages::line));
    search.subscribe(_ -> searchAnew());
  }

  /** The lines that are shown; another list as soon as something else is searched. */
  ReadOnlyObjectProperty<JournalLines> shownProperty() {
    return shown.getReadOnlyProperty();
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
  void choose(Optional<JournalLine> line) {
    following.unsubscribe();
    chosenLine = line;
    following = line.map(now -> now.rowProperty().subscribe(row -> row.ifPresent(_ -> chosen.set(row)))).orElse(Subscription.EMPTY);
    if (line.isEmpty()) {
      chosen.set(Optional.empty());
    }
  }

  private void readAgain(List<Long> numbers) {
    chosenLine.ifPresent(pages::keep);
    pages.readAgain(numbers);
  }

  /** Turns to the entry with a number, and leaves the search for that. */
  void open(long number) {
    search.set("");
    work.run(new Journal(studio)::last, newest -> {
      show(newest);
      if (number >= 1 && number <= newest) {
        choose(Optional.of(pages.line(number)));
      } else {
        status.wrong(Say.text("There is no entry {0} in the journal.", number));
      }
    }, status::wrong);
  }

  /** Asks the ledger what is new; the choice stays with the same entry. */
  public void refresh() {
    work.run(new Journal(studio)::last, latest.only(this::show), latest.also(status::wrong));
  }

  private void show(long newest) {
    if (newest > last) {
      long before = last;
      last = newest;
      if (before > 0) {
        lookBack(before, newest);
      }
      if (search.get().isBlank()) {
        shown.get().growTo(newest);
      } else {
        lookFor(before, shown.get()::prepend);
      }
      pages.readAhead(shown.get(), 0);
    }
    summarise();
  }

  /** Entries that are kept may have been taken back meanwhile. */
  private void lookBack(long before, long newest) {
    if (newest - before > MANY) {
      chosenLine.ifPresent(pages::keep);
      pages.readAllAgain();
    } else {
      work.run(() -> takenBackSince(before, newest), this::readAgain, status::wrong);
    }
  }

  private List<Long> takenBackSince(long before, long newest) {
    List<Long> numbers = LongStream.rangeClosed(before + 1, newest).boxed().toList();
    return new Journal(studio).numbered(numbers).stream().map(NumberedEntry::takesBack).flatMap(Optional::stream).toList();
  }

  private void searchAnew() {
    searches.incrementAndGet();
    looking = false;
    if (search.get().isBlank()) {
      shown.set(JournalLines.all(last, pages::line));
      pages.readAhead(shown.get(), 0);
    } else {
      JournalLines found = JournalLines.found(pages::line);
      shown.set(found);
      lookFor(0, found::append);
    }
    summarise();
  }

  private interface Found {
    void numbers(List<Long> numbers);
  }

  /** What was found is told bit by bit, unless something else is searched meanwhile. */
  private void lookFor(long above, Found found) {
    long mine = searches.get();
    String words = search.get();
    JournalSearch in = spokenNow();
    looking = true;
    searching.run(
        () -> {
          in.find(words, above, () -> searches.get() != mine, numbers -> searching.here().execute(() -> ifWanted(mine, () -> found.numbers(numbers))));
          return mine;
        },
        _ -> ifWanted(mine, () -> looking = false),
        trouble -> ifWanted(mine, () -> {
          looking = false;
          status.wrong(trouble);
        }));
  }

  private void ifWanted(long mine, Runnable then) {
    if (searches.get() == mine) {
      then.run();
      summarise();
    }
  }

  /** What entries are searched by is said in the language of the window. */
  private JournalSearch spokenNow() {
    if (language != Say.language()) {
      language = Say.language();
      index = new JournalSearch(studio, JournalRow::spoken);
    }
    return index;
  }

  private void summarise() {
    if (search.get().isBlank()) {
      summary.set(Say.count(last, "{0} entry", "{0} entries"));
    } else if (looking) {
      summary.set(Say.count(last, "{1} of {0} entry so far, looking further", "{1} of {0} entries so far, looking further", shown.get().size()));
    } else {
      summary.set(Say.count(last, "{1} of {0} entry", "{1} of {0} entries", shown.get().size()));
    }
  }
}
