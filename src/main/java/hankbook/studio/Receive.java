package hankbook.studio;

import hankbook.exchange.BadInput;
import hankbook.exchange.StockFile;
import hankbook.ledger.EntryKind;
import hankbook.ledger.Place;
import hankbook.ledger.Transfer;
import hankbook.measure.Length;
import hankbook.store.Session;
import hankbook.yarn.Measures;
import hankbook.yarn.Skein;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.UUID;

/** Takes skeins into the house. A skein whose length is not known is written down all the same, and counts as nothing until it is measured. */
public final class Receive {
  /**
   * What became of the rows of a file.
   *
   * @param received taken into the house
   * @param alreadyThere received before, just as the file says
   */
  public record Delivery(int received, int alreadyThere) {}

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
      Optional<Arrival> arrival = arrival(session, there, skein);
      Optional<String> another = arrival.flatMap(Arrival::anotherYarn);
      if (another.isPresent()) {
        throw NotDone.because("{0}, {1}; nothing was changed.", skein.code(), another.get());
      }
      if (there.isPresent() && arrival.isEmpty() && !session.skeins().wasEver(skein)) {
        throw NotDone.because("There is another skein {0} already, {1}; give this one a code of its own.", skein.code(), there.get().yarn());
      }
      if (isEmptied(session, skein)) {
        throw NotDone.because("{0} has nothing on it; leave its length out where it is not known.", skein.code());
      }
      if (there.isEmpty() || arrival.isPresent()) {
        new CostSaid(session).refuse(skein.code(), there, arrival.map(Arrival::comes).orElse(skein).cost());
      }
      if (there.isEmpty()) {
        session.skeins().add(skein, studio.now());
        enter(session, id, skein, "");
      } else if (arrival.isPresent() && session.entries().entry(id).isEmpty()) {
        arrive(session, id, arrival.get(), "");
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
    return file(name, text, Progress.UNHEARD);
  }

  /**
   * The same, for one who watches it come in and may stop it.
   *
   * @throws BadInput naming every row that cannot be taken
   */
  public Delivery file(String name, String text, Progress progress) throws BadInput, NotDone {
    List<StockFile.Row> rows = StockFile.rows(name, text);
    return studio.write(session -> receive(session, name, rows, progress));
  }

  Delivery receive(Session session, String name, List<StockFile.Row> rows) throws BadInput, NotDone {
    return receive(session, name, rows, Progress.UNHEARD);
  }

  /** Each row is looked at first and then taken. */
  private Delivery receive(Session session, String name, List<StockFile.Row> rows, Progress progress) throws BadInput, NotDone {
    int done = 0;
    List<Skein> unknown = new ArrayList<>();
    List<Arrival> again = new ArrayList<>();
    List<String> faults = new ArrayList<>();
    CostSaid costs = new CostSaid(session);
    for (StockFile.Row row : rows) {
      progress.at(done++, 2L * rows.size());
      Optional<Skein> there = session.skeins().find(row.skein().code());
      Optional<Arrival> arrival = arrival(session, there, row.skein());
      Optional<String> fault = fault(session, costs, there, arrival, row.skein());
      if (fault.isPresent()) {
        faults.add(name + ", row " + row.number() + ", " + fault.get());
      } else if (there.isEmpty()) {
        unknown.add(row.skein());
      } else {
        arrival.ifPresent(again::add);
      }
    }
    if (!faults.isEmpty()) {
      throw new BadInput(faults);
    }
    for (Skein skein : unknown) {
      progress.at(done++, 2L * rows.size());
      session.skeins().add(skein, studio.now());
      enter(session, Studio.onceFor(session, "received", skein.code()), skein, "from " + name);
    }
    for (Arrival arrival : again) {
      progress.at(done++, 2L * rows.size());
      arrive(session, Studio.onceFor(session, "received", arrival.known().code()), arrival, "from " + name);
    }
    int received = unknown.size() + again.size();
    return new Delivery(received, rows.size() - received);
  }

  /** Why a row cannot be taken, without where it stands. */
  private static Optional<String> fault(Session session, CostSaid costs, Optional<Skein> there, Optional<Arrival> arrival, Skein comes) {
    Optional<String> another = arrival.flatMap(Arrival::anotherYarn);
    if (isEmptied(session, comes)) {
      return Optional.of("length: found a skein with nothing on it, wanted one that holds yarn, or no length where it is not known");
    } else if (there.isEmpty() || another.isPresent()) {
      return another.or(() -> costs.fault(there, comes.cost()));
    } else if (arrival.isPresent()) {
      return costs.fault(there, arrival.get().comes().cost());
    }
    return cameSo(session, there.get(), comes)
        ? Optional.empty()
        : Optional.of("code: found '" + comes.code() + "', which another skein of the ledger has, wanted a code of its own");
  }

  /** A skein that was written down and may come now, being on order or in no place. */
  static Optional<Arrival> arrival(Session session, Optional<Skein> there, Skein comes) {
    return there.filter(known -> wasTakenBack(session, known) || ExpectedYarn.isOnOrder(session, known.code())).map(known -> CostSaid.ruled(session, known, comes));
  }

  private static boolean cameSo(Session session, Skein known, Skein comes) {
    return known.equals(comes)
        || session.skeins().wasEver(comes)
        || (session.skeins().wasDescribed(known.code()) && CostSaid.ruled(session, known, comes).isKnown(session.remeasurements().of(known.code())));
  }

  private void arrive(Session session, UUID id, Arrival arrival, String note) throws NotDone {
    Skein described = arrival.described(studio.today());
    session.skeins().describe(described, studio.author(), studio.now());
    enter(session, id, described, note);
    Optional<Measures> measured = arrival.measuredAnew();
    if (measured.isPresent() && Grists.known(session, arrival.comes()).isMeasured()) {
      new Recount(studio).onArrival(session, described, measured.get());
    }
  }

  private static boolean isEmptied(Session session, Skein skein) {
    Skein known = Grists.known(session, skein);
    return known.isMeasured() && known.holds().isZero();
  }

  /** A skein that was written down and is in no place may come: its every receipt was taken back, or its yarn's grist was not known. */
  private static boolean wasTakenBack(Session session, Skein skein) {
    Skein known = Grists.known(session, skein);
    return known.isMeasured() && session.balances().ofSkein(known.code()).lengths().isEmpty() && !session.balances().woundOnly().contains(known.code());
  }

  private void enter(Session session, UUID id, Skein skein, String note) {
    Length holds = Grists.known(session, skein).holds();
    if (ExpectedYarn.isOnOrder(session, skein.code())) {
      studio.post(session, id, EntryKind.RECEIVE, skein.received().orElse(studio.today()), note, List.of(ExpectedYarn.arrival(session, skein.code())));
    } else if (holds.isPositive()) {
      Transfer transfer = new Transfer(skein.code(), new Place.Maker(), new Place.Shelf(), holds);
      studio.post(session, id, EntryKind.RECEIVE, skein.received().orElse(studio.today()), note, List.of(transfer));
    }
  }
}
