package hankbook.studio;

import hankbook.ledger.Change;
import hankbook.ledger.ChainedEntry;
import hankbook.ledger.LastSaid;
import java.util.List;
import java.util.Optional;

/**
 * What taking something back would do, before it is done.
 *
 * @param entries that would be taken back, the last first
 * @param changes what would become of which skein where
 * @param whyNot why it cannot be taken back, where it cannot
 * @param saidSince what its author said since that is no entry and so is not taken back
 */
public record Undoing(List<ChainedEntry> entries, List<Change> changes, Optional<String> whyNot, Optional<LastSaid> saidSince) {
  public Undoing {
    entries = List.copyOf(entries);
    changes = List.copyOf(changes);
  }

  /** The entry that is spoken of. */
  public ChainedEntry main() {
    return entries.getFirst();
  }
}
