package hankbook.studio;

import hankbook.ledger.ChainedEntry;
import java.time.Instant;
import java.util.Optional;
import java.util.UUID;

/**
 * An entry as the journal shows it.
 *
 * @param chained the entry in its place in the chain
 * @param recorded when it was written down
 * @param reversedBy the entry that took it back, where one did
 */
public record JournalEntry(ChainedEntry chained, Instant recorded, Optional<UUID> reversedBy) {
  /** Whether the entry moves a skein. */
  public boolean moves(String code) {
    return chained.entry().transfers().stream().anyMatch(transfer -> transfer.skein().equals(code));
  }
}
