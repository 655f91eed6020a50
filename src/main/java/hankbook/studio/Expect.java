package hankbook.studio;

import hankbook.exchange.BadInput;
import hankbook.exchange.StockFile;
import hankbook.ledger.ChainedEntry;
import hankbook.ledger.Entry;
import hankbook.ledger.EntryKind;
import hankbook.ledger.Place;
import hankbook.ledger.Transfer;
import hankbook.measure.Phrase;
import hankbook.store.Session;
import hankbook.yarn.OneLine;
import hankbook.yarn.Skein;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;

/** Yarn that is ordered and has not come: it is not on the shelf, and no plan can have it yet. */
public final class Expect {
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

  /**
   * Puts skeins on order, or none. What is on order already, just as it is given, is left there.
   *
   * @return how many were not on order before
   * @throws NotDone if another skein bears one of their codes, or the day is past
   */
  public int skeins(List<Skein> skeins, LocalDate due) throws NotDone {
    refusePast(due);
    return studio.write(session -> {
      int fresh = 0;
      CostSaid costs = new CostSaid(session);
      for (Skein skein : skeins) {
        if (session.skeins().find(skein.code()).isPresent() && !session.skeins().wasEver(skein)) {
          throw NotDone.because("Another skein bears the code {0}; nothing was put on order.", skein.code());
        }
        if (session.balances().ofSkein(skein.code()).lengths().isEmpty()) {
          if (session.skeins().find(skein.code()).isEmpty()) {
            costs.refuse(skein.code(), Optional.empty(), skein.cost());
          }
          order(session, "by " + due, skein, due);
          fresh++;
        }
      }
      return fresh;
    });
  }

  private void refusePast(LocalDate due) throws NotDone {
    if (due.isBefore(studio.today())) {
      throw NotDone.because("Yarn cannot be expected on {0}, which is past; give today or a day to come.", due);
    }
  }

  private Ordered order(Session session, String name, List<StockFile.Row> rows, LocalDate due) throws BadInput {
    List<String> faults = new ArrayList<>();
    List<Skein> fresh = new ArrayList<>();
    CostSaid costs = new CostSaid(session);
    for (StockFile.Row row : rows) {
      Optional<Skein> there = session.skeins().find(row.skein().code());
      if (!Grists.known(session, row.skein()).holds().isPositive()) {
        faults.add(name + ", row " + row.number() + ", length: found nothing, wanted the length that is ordered, or its weight and grist");
      } else if (there.isPresent() && !session.skeins().wasEver(row.skein())) {
        faults.add(name + ", row " + row.number() + ", code: found '" + row.skein().code() + "', which another skein of the ledger has, wanted a code of its own");
      } else if (there.isEmpty() || session.balances().ofSkein(row.skein().code()).lengths().isEmpty()) {
        fresh.add(row.skein());
        Optional<String> cost = there.isEmpty() ? costs.fault(there, row.skein().cost()) : Optional.empty();
        cost.ifPresent(fault -> faults.add(name + ", row " + row.number() + ", " + fault));
      } else if (ExpectedYarn.isOnOrder(session, row.skein().code())) {
        session.dues().keep(row.skein().code(), due, studio.author(), studio.now());
      }
    }
    if (!faults.isEmpty()) {
      throw new BadInput(faults);
    }
    fresh.forEach(skein -> order(session, "by " + due + ", from " + name, skein, due));
    return new Ordered(fresh.size(), rows.size() - fresh.size());
  }

  private void order(Session session, String note, Skein skein, LocalDate due) {
    if (session.skeins().find(skein.code()).isEmpty()) {
      session.skeins().add(skein, studio.now());
    }
    Transfer transfer = new Transfer(skein.code(), new Place.Maker(), new Place.Ordered(), Grists.known(session, skein).holds());
    studio.post(session, Studio.onceFor(session, "expected", skein.code()), EntryKind.EXPECT, note, List.of(transfer));
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
    return arrived(id, codes, SkeinFacts.NONE);
  }

  /**
   * Takes skeins that were on order into the house, all of them in one entry, and says of each what is known now that it is here.
   *
   * @param facts what they leave open stays as it was ordered; without a day they came today
   * @throws NotDone if one of them is not on order, or they would have come on a day to come
   */
  public Optional<ChainedEntry> arrived(UUID id, List<String> codes, SkeinFacts facts) throws NotDone {
    facts.refuseWhatIsYetToCome(studio.today());
    SkeinFacts now = facts.cameOn(studio.today());
    return studio.write(session -> {
      if (session.entries().entry(id).isPresent()) {
        return Optional.empty();
      }
      List<Transfer> transfers = new ArrayList<>();
      CostSaid costs = new CostSaid(session);
      for (String code : onOrder(session, codes)) {
        Skein skein = session.skeins().find(code).orElseThrow();
        costs.refuse(code, Optional.of(skein), now.cost());
        session.skeins().describe(now.of(skein), studio.author(), studio.now());
        transfers.add(ExpectedYarn.arrival(session, code));
      }
      return studio.post(session, id, EntryKind.RECEIVE, now.received().orElseThrow(), "arrived", transfers);
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
        throw NotDone.because("There is no skein {0} in the ledger; nothing was changed.", code);
      }
      if (!ExpectedYarn.isOnOrder(session, code)) {
        throw NotDone.because(notOnOrder(session, code));
      }
      found.add(code);
    }
    return found;
  }

  private static Phrase notOnOrder(Session session, String code) {
    return session.balances().ofSkein(code).lengths().isEmpty()
        ? Phrase.of("{0} is not on order: it never was, or that was taken back; nothing was changed.", code)
        : Phrase.of("{0} is not on order: it has come; nothing was changed.", code);
  }
}
