package hankbook.store;

import static hankbook.store.Examples.MAKER;
import static hankbook.store.Examples.NOON;
import static hankbook.store.Examples.SET_ASIDE;
import static hankbook.store.Examples.SHELF;
import static hankbook.store.Examples.move;

import hankbook.ledger.Entry;
import hankbook.ledger.EntryKind;
import hankbook.ledger.Transfer;
import java.util.List;
import java.util.UUID;

/** A program that posts, so many times, two entries with a version of a plan, and says the first one's id once they are kept. */
final class PostingProgram {
  private PostingProgram() {}

  public static void main(String[] args) throws Exception {
    OtherProgram.quietLibraries();
    long run = Long.parseLong(args[1]);
    long times = Long.parseLong(args[2]);
    try (Store store = Store.open(LedgerAddress.parse(args[0]))) {
      // Whoever started this one and is gone hears nothing more.
      for (long i = 1; i <= times && !System.out.checkError(); i++) {
        Entry received = entry(new UUID(run, i), EntryKind.RECEIVE, move(MAKER, SHELF, 2));
        Entry reserved = entry(beside(received), EntryKind.RESERVE, move(SHELF, SET_ASIDE, 2));
        store.write(session -> {
          session.entries().post(received, NOON);
          session.entries().post(reserved, NOON);
          session.plans().keep("Scarf", received.id().toString(), "Ida", NOON);
          return received;
        });
        System.out.println(received.id());
      }
    }
  }

  /** The id of the entry that is posted in the same transaction as another. */
  static UUID beside(Entry received) {
    return new UUID(-received.id().getMostSignificantBits(), received.id().getLeastSignificantBits());
  }

  private static Entry entry(UUID id, EntryKind kind, Transfer transfer) {
    return Entry.of(id, kind, Examples.DAY, "Ida", "wound in the evening", List.of(transfer));
  }
}
