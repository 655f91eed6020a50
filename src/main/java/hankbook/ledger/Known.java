package hankbook.ledger;

import hankbook.measure.Length;
import java.util.Optional;
import java.util.UUID;

/** What has to be known of a ledger to judge one more entry; a store can answer it by look-ups without reading the whole ledger. */
public interface Known {
  /** The entry with an id. */
  Optional<Entry> entry(UUID id);

  /** Whether an entry has been reversed. */
  boolean isReversed(UUID id);

  /** The length of a skein at a place. */
  Length balance(Holding holding);
}
