package hankbook.store;

import hankbook.ledger.ChainedEntry;
import hankbook.ledger.Entry;
import java.time.Instant;

/**
 * An entry as it lies in the ledger.
 *
 * @param chained the entry in its place in the chain
 * @param recorded when it was written down, which the chain does not cover
 */
public record RecordedEntry(ChainedEntry chained, Instant recorded) {
  /** The entry itself. */
  public Entry entry() {
    return chained.entry();
  }
}
