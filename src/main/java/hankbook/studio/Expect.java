package hankbook.studio;

import hankbook.exchange.BadInput;
import hankbook.exchange.StockFile;
import hankbook.ledger.ChainedEntry;
import hankbook.ledger.Entry;
import hankbook.ledger.EntryKind;
import hankbook.ledger.Place;
import hankbook.ledger.Transfer;
import hankbook.store.Session;
import hankbook.yarn.OneLine;
import hankbook.yarn.Skein;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;

/** Yarn that is ordered and has not come: it is not on the shelf, and no plan can have it yet. */
public final class Expect {
  private static final RowsInLedger.Fault NOTHING =
      new RowsInLedger.Fault(skein -> !skein.holds().isPositive(), "nothing, wanted the length that is ordered, or its weight and grist");

  private final Studio studio;

  public Expect(Studio studio) {
    this.studio = studio;
  }

  /**
   * What became of the rows of a file.
   *
   * @param expected put on order
   * @param alreadyThere on order or in the house before, just as the file says
   */
  public record Ordered(int expected, int alreadyThere) {}

  /** What is on order, the earliest expected first. */
  public List<ExpectedSkein> all() {
    return studio.read(ExpectedYarn::of);
  }

  /**
   * Puts all skeins of a stock file on order, or none. What is on order already is left there, expected by the day now given.
   *
   * @param name the file's, for messages and the journal
   * @throws BadInput naming every row that cannot be taken
   * @throws NotDone if the day is past
   */
  public Ordered file(String name, String text, LocalDate due) throws BadInput, NotDone {
    refusePast(due);
    List<StockFile.Row> rows = StockFile.rows(name, text);
    return studio.write(session -> order(session, name, rows, due));
  }

  private void refusePast(LocalDate due) throws NotDone {
    if (due.isBefore(studio.today())) {
      throw NotDone.because("Yarn cannot be expected on " + due + ", which is past; give today or a day to come.");
    }
  }

  private Ordered order(Session session, String name, List<StockFile.Row> rows, LocalDate due) throws BadInput {
    RowsInLedger sorted = RowsInLedger.of(session, name, rows, NOTHING);
    List<Skein> fresh = new ArrayList<>(sorted.unknown());
    for (Skein skein : sorted.known()) {
      if (session.balances().ofSkein(skein.code()).lengths().isEmpty()) {
        fresh.add(skein);
      } else if (ExpectedYarn.isOnOrder(session, skein.code())) {
        session.dues().keep(skein.code(), due, studio.author(), studio.now());
      }
    }
    fresh.forEach(skein -> order(session, name, skein, due));
    return new Ordered(fresh.size(), rows.size() - fresh.size());
  }

  private void order(Session session, String name, Skein skein, LocalDate due) {
    if (session.skeins().find(skein.code()).isEmpty()) {
      session.skeins().add(skein, studio.now());
    }
    Transfer transfer = new Transfer(skein.code(), new Place.Maker(), new Place.Ordered(), RowsInLedger.withGrist(session, skein).holds());
    UUID first = UUID.nameUUIDFromBytes(("expected " + skein.code()).getBytes(StandardCharsets.UTF_8));
    UUID id = session.entries().entry(first).isEmpty() ? first : UUID.randomUUID();
    studio.post(session, id, EntryKind.EXPECT, "by " + due + ", from " + name, List.of(transfer));
    session.dues().keep(skein.code(), due, studio.author(), studio.now());
  }

  /**
   * Expects skeins on another day.
   *
   * @return how many were expected on another day until now
   * @throws NotDone if one of them is not on order, or the day is past
   */
  public int due(List<String> codes, LocalDate due) throws NotDone {
    refusePast(due);
    return studio.write(session -> {
      int changed = 0;
      for (String code : onOrder(session, codes)) {
        changed += session.dues().keep(code, due, studio.author(), studio.now()) ? 1 : 0;
      }
      return changed;
    });
  }

  /**
   * Takes skeins that were on order into the house, all of them in one entry.
   *
   * @throws NotDone if one of them is not on order
   */
  public Optional<ChainedEntry> arrived(UUID id, List<String> codes) throws NotDone {
    return studio.write(session -> {
      if (session.entries().entry(id).isPresent()) {
        return Optional.empty();
      }
      List<Transfer> transfers = onOrder(session, codes).stream().map(code -> ExpectedYarn.arrival(session, code)).toList();
      return studio.post(session, id, EntryKind.RECEIVE, "arrived", transfers);
    });
  }

  /**
   * Gives up skeins that will not come: takes back the entries that put them on order.
   *
   * @param reason not blank
   * @throws NotDone if one of them is not on order
   */
  public List<ChainedEntry> cancel(List<String> codes, String reason) throws NotDone {
    if (reason.isBlank()) {
      throw NotDone.because("Say why the yarn will not come; the journal keeps the reason.");
    }
    return studio.write(session -> {
      List<ChainedEntry> entered = new ArrayList<>();
      for (String code : onOrder(session, codes)) {
        Entry ordered = session.entries().expecting(code).orElseThrow(() -> new IllegalStateException("nothing put " + code + " on order"));
        session.entries().post(Entry.reversing(ordered, UUID.randomUUID(), studio.today(), studio.author(), Note.of(reason)), studio.now()).ifPresent(entered::add);
      }
      return entered;
    });
  }

  private static Set<String> onOrder(Session session, List<String> codes) throws NotDone {
    Set<String> found = new LinkedHashSet<>();
    for (String given : codes) {
      String code = OneLine.of(given);
      if (session.skeins().find(code).isEmpty()) {
        throw NotDone.because("There is no skein " + code + " in the ledger; nothing was changed.");
      }
      if (!ExpectedYarn.isOnOrder(session, code)) {
        throw NotDone.because(code + " is not on order: " + whereItIs(session, code) + "; nothing was changed.");
      }
      found.add(code);
    }
    return found;
  }

  private static String whereItIs(Session session, String code) {
    return session.balances().ofSkein(code).lengths().isEmpty() ? "it never was, or that was taken back" : "it has come";
  }
}
