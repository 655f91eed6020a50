package hankbook.studio;

import hankbook.store.Entries;
import hankbook.store.RecordedEntry;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;

/** Everything that was done. */
public final class Journal {
  private final Studio studio;

  public Journal(Studio studio) {
    this.studio = studio;
  }

  /** Every entry, the newest first. */
  public List<JournalEntry> newestFirst() {
    return newestFirst(studio.read(session -> session.entries().all()));
  }

  /** Every entry that moves a skein, the newest first; what takes one of them back moves it too. */
  public List<JournalEntry> ofSkein(String code) {
    return newestFirst(studio.read(session -> session.entries().ofSkein(code)));
  }

  private static List<JournalEntry> newestFirst(List<RecordedEntry> all) {
    Map<UUID, UUID> reversedBy = new HashMap<>();
    all.forEach(recorded -> recorded.entry().reverses().ifPresent(original -> reversedBy.put(original, recorded.entry().id())));
    return all.reversed().stream()
        .map(recorded -> new JournalEntry(recorded.chained(), recorded.recorded(), Optional.ofNullable(reversedBy.get(recorded.entry().id()))))
        .toList();
  }

  /** How many entries there are, which is also the number of the newest. */
  public long last() {
    return studio.read(session -> session.entries().end().entries());
  }

  /** Some entries by their numbers, the newest first; a number that there is not is passed over. */
  public List<NumberedEntry> numbered(Collection<Long> numbers) {
    return studio.read(session -> numbered(session.entries(), numbers));
  }

  private static List<NumberedEntry> numbered(Entries entries, Collection<Long> numbers) {
    Map<Long, Long> takenBackBy = entries.takenBackBy(numbers);
    Map<Long, Long> takesBack = entries.takesBack(numbers);
    return entries.numbered(numbers).reversed().stream()
        .map(recorded -> {
          long number = recorded.chained().number();
          return new NumberedEntry(recorded.chained(), recorded.recorded(), Optional.ofNullable(takenBackBy.get(number)), Optional.ofNullable(takesBack.get(number)));
        })
        .toList();
  }
}
