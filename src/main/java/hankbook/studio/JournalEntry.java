package hankbook.studio;

import hankbook.ledger.ChainedEntry;
import java.time.Instant;
import java.util.Optional;
import java.util.UUID;

/**
 * An entry as the journal shows it.
 *
 * @param chained the entry and its number
 * @param recorded when it was written down
 * @param reversedBy the entry that took it back
 */
public record JournalEntry(ChainedEntry chained, Instant recorded, Optional<UUID> reversedBy) {}
