package hankbook.ledger;

import hankbook.measure.Length;
import java.util.UUID;

/** One thing an audit found wrong. */
public sealed interface Finding {
  /** What is wrong, in words. */
  String message();

  /** An entry that cannot even be read as one. */
  record Illegible(long position, UUID id, String what) implements Finding {
    @Override
    public String message() {
      return "Entry %d (%s) is not as it was written, and cannot be read: %s.".formatted(position, id, what);
    }
  }

  /** A kept balance that cannot even be read as one. */
  record IllegibleBalance(String skein, String what) implements Finding {
    @Override
    public String message() {
      return "A kept balance of %s cannot be read: %s.".formatted(skein, what);
    }
  }

  /** A chain that does not end where the ledger says it does. */
  record WrongEnd(long said, long found) implements Finding {
    @Override
    public String message() {
      return said == found
          ? "The last of the %d entries is not the one that the ledger says it ends with.".formatted(found)
          : "The ledger says it holds %d entries, but %d are there.".formatted(said, found);
    }
  }

  /** An entry whose number or hashes are not what its content and the entry before make them. */
  record BrokenChain(long position, ChainedEntry entry, String what) implements Finding {
    @Override
    public String message() {
      return "Entry %d (%s) is not as it was written: %s.".formatted(position, entry.entry().id(), what);
    }
  }

  /** An entry that the ledger would never have taken. */
  record NotAllowed(long position, ChainedEntry entry, String why) implements Finding {
    @Override
    public String message() {
      return "Entry %d (%s) should not have been taken: %s".formatted(position, entry.entry().id(), why);
    }
  }

  /** A skein whose balances do not sum to zero. */
  record NotConserved(String skein, Length sum) implements Finding {
    @Override
    public String message() {
      return "The balances of %s sum to %s over all places; they should sum to 0 m.".formatted(skein, sum);
    }
  }

  /** A place that holds less than nothing. */
  record Negative(Holding holding, Length length) implements Finding {
    @Override
    public String message() {
      return "%s: %s holds %s, less than nothing.".formatted(holding.skein(), holding.place().words(), length);
    }
  }

  /** A kept balance that is not what the entries add up to. */
  record KeptDiffers(Holding holding, Length kept, Length recomputed) implements Finding {
    @Override
    public String message() {
      return "%s: %s is kept as %s, but the entries add up to %s."
          .formatted(holding.skein(), holding.place().words(), kept, recomputed);
    }
  }
}
