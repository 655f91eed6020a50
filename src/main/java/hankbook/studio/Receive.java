package hankbook.studio;

import hankbook.exchange.BadInput;
import hankbook.exchange.StockFile;
import hankbook.ledger.EntryKind;
import hankbook.ledger.Place;
import hankbook.ledger.Transfer;
import hankbook.measure.Length;
import hankbook.store.Session;
import hankbook.yarn.Skein;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.Stream;

/** Takes skeins into the house. A skein whose length is not known is written down all the same, and counts as nothing until it is measured. */
public final class Receive {
  /**
   * What became of the rows of a file.
   *
   * @param received taken into the house
   * @param alreadyThere received before, just as the file says
   */
  public record Delivery(int received, int alreadyThere) {}

  private static final RowsInLedger.Fault EMPTIED =
      new RowsInLedger.Fault(skein -> skein.isMeasured() && skein.holds().isZero(), "a skein with nothing on it, wanted one that holds yarn, or no length where it is not known");

  private final Studio studio;

  public Receive(Studio studio) {
    this.studio = studio;
  }

  /**
   * Receives one skein.
   *
   * @throws NotDone if its code belongs to another
   */
  public void skein(UUID id, Skein skein) throws NotDone {
    studio.write(session -> {
      Optional<Skein> there = session.skeins().find(skein.code());
      if (there.isPresent() && !there.get().equals(skein)) {
        throw NotDone.because("There is another skein " + skein.code() + " already, " + there.get().yarn() + "; give this one a code of its own.");
      }
      if (EMPTIED.is().test(RowsInLedger.withGrist(session, skein))) {
        throw NotDone.because(skein.code() + " has nothing on it; leave its length out where it is not known.");
      }
      if (there.isEmpty()) {
        session.skeins().add(skein, studio.now());
      }
      boolean comes = there.isPresent() && comesAgain(session, skein);
      if (there.isEmpty() || (comes && session.entries().entry(id).isEmpty())) {
        enter(session, id, skein, "");
      }
      return skein;
    });
  }

  /**
   * Receives all skeins of a stock file, or none. Those received before are left as they are, so that a file may be read again.
   *
   * @param name the file's, for messages and the journal
   * @throws BadInput naming every row that cannot be taken
   */
  public Delivery file(String name, String text) throws BadInput, NotDone {
    List<StockFile.Row> rows = StockFile.rows(name, text);
    return studio.write(session -> receive(session, name, rows));
  }

  Delivery receive(Session session, String name, List<StockFile.Row> rows) throws BadInput {
    RowsInLedger sorted = RowsInLedger.of(session, name, rows, EMPTIED);
    sorted.unknown().forEach(skein -> session.skeins().add(skein, studio.now()));
    Stream<Skein> again = sorted.known().stream().filter(skein -> comesAgain(session, skein));
    List<Skein> fresh = Stream.concat(sorted.unknown().stream(), again).toList();
    fresh.forEach(skein -> enter(session, receiptOf(session, skein), skein, "from " + name));
    return new Delivery(fresh.size(), rows.size() - fresh.size());
  }

  private static boolean comesAgain(Session session, Skein skein) {
    return wasTakenBack(session, skein) || ExpectedYarn.isOnOrder(session, skein.code());
  }

  /** A skein that was written down and is in no place may come: its every receipt was taken back, or its yarn's grist was not known. */
  private static boolean wasTakenBack(Session session, Skein skein) {
    Skein known = RowsInLedger.withGrist(session, skein);
    return known.isMeasured() && session.balances().ofSkein(known.code()).lengths().isEmpty();
  }

  /** As long as it is not taken back, the receipt of a code has one id however often a file is read. */
  private static UUID receiptOf(Session session, Skein skein) {
    UUID first = UUID.nameUUIDFromBytes(("received " + skein.code()).getBytes(StandardCharsets.UTF_8));
    return session.entries().entry(first).isEmpty() ? first : UUID.randomUUID();
  }

  private void enter(Session session, UUID id, Skein skein, String note) {
    Length holds = RowsInLedger.withGrist(session, skein).holds();
    if (ExpectedYarn.isOnOrder(session, skein.code())) {
      studio.post(session, id, EntryKind.RECEIVE, skein.received().orElse(studio.today()), note, List.of(ExpectedYarn.arrival(session, skein.code())));
    } else if (holds.isPositive()) {
      Transfer transfer = new Transfer(skein.code(), new Place.Maker(), new Place.Shelf(), holds);
      studio.post(session, id, EntryKind.RECEIVE, skein.received().orElse(studio.today()), note, List.of(transfer));
    }
  }
}
