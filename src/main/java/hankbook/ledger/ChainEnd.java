package hankbook.ledger;

import java.util.List;

/**
 * Where a chain ends, as it is kept beside the chain.
 *
 * @param entries how many there are
 * @param lastHash the last one's, or {@link Chain#START}
 */
public record ChainEnd(long entries, String lastHash) {
  /** Where these entries end. */
  static ChainEnd of(List<ChainedEntry> entries) {
    return new ChainEnd(entries.size(), entries.isEmpty() ? Chain.START : entries.getLast().hash());
  }
}
