package hankbook.studio;

import hankbook.store.RecordedEntry;
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
}
