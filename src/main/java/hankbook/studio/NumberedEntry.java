package hankbook.studio;

import hankbook.ledger.ChainedEntry;
import java.time.Instant;
import java.util.Optional;

/**
 * An entry of the journal, and by number those that belong to it.
 *
 * @param chained the entry in its place in the chain
 * @param recorded when it was written down
 * @param takenBackBy the entry that took it back, where one did
 * @param takesBack the entry that it took back itself
 */
public record NumberedEntry(ChainedEntry chained, Instant recorded, Optional<Long> takenBackBy, Optional<Long> takesBack) {}
