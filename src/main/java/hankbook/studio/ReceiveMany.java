package hankbook.studio;

import hankbook.ledger.EntryKind;
import hankbook.ledger.Place;
import hankbook.ledger.Transfer;
import hankbook.measure.Length;
import hankbook.store.Session;
import hankbook.yarn.Measures;
import hankbook.yarn.Skein;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;

/** Takes several skeins into the house that came together: all of them in one entry, so that they are taken back together, or none. */
public final class ReceiveMany {
  private final Studio studio;

  public ReceiveMany(Studio studio) {
    this.studio = studio;
  }

  /**
   * Receives skeins on the day that the first of them came: such as the ledger does not know yet, are on order, or whose receipts were all taken back. Those whose
   * length is not known are written down and count as nothing until they are measured. Where the same were received so before, nothing is done.
   *
   * @throws NotDone naming the first that cannot be taken: its code is taken or given twice, it has nothing on it, or its cost is in another currency than the ledger's
   */
  public void skeins(UUID id, List<Skein> skeins) throws NotDone {
    studio.write(session -> {
      boolean done = session.entries().entry(id).isPresent() || (!skeins.isEmpty() && skeins.stream().allMatch(skein -> cameSo(session, skein)));
      return done ? Optional.empty() : receive(session, id, skeins);
    });
  }

  /** Whether it was written down so, and does not wait to come once more. */
  private static boolean cameSo(Session session, Skein skein) {
    return session.skeins().wasEver(skein) && Receive.arrival(session, session.skeins().find(skein.code()), skein).isEmpty();
  }

  private Optional<?> receive(Session session, UUID id, List<Skein> skeins) throws NotDone {
    CostSaid costs = new CostSaid(session);
    Set<String> codes = new HashSet<>();
    List<Transfer> transfers = new ArrayList<>();
    List<Arrival> again = new ArrayList<>();
    for (Skein skein : skeins) {
      Optional<Skein> there = session.skeins().find(skein.code());
      Optional<Arrival> arrival = Receive.arrival(session, there, skein);
      refuse(session, skein, arrival, codes.add(skein.code()));
      costs.refuse(skein.code(), there, arrival.map(Arrival::comes).orElse(skein).cost());
      Skein written = write(session, skein, there, arrival);
      arrival.ifPresent(again::add);
      comes(session, written).ifPresent(transfers::add);
    }
    LocalDate came = skeins.stream().findFirst().flatMap(Skein::received).orElse(studio.today());
    Optional<?> entered = studio.post(session, id, EntryKind.RECEIVE, came, "", transfers);
    for (Arrival arrival : again) {
      measure(session, arrival);
    }
    return entered;
  }

  private Skein write(Session session, Skein skein, Optional<Skein> there, Optional<Arrival> arrival) {
    if (there.isEmpty()) {
      session.skeins().add(skein, studio.now());
      return skein;
    }
    Skein described = arrival.map(comes -> comes.described(studio.today())).orElse(there.get());
    session.skeins().describe(described, studio.author(), studio.now());
    return described;
  }

  private static Optional<Transfer> comes(Session session, Skein skein) {
    if (ExpectedYarn.isOnOrder(session, skein.code())) {
      return Optional.of(ExpectedYarn.arrival(session, skein.code()));
    }
    Length holds = Grists.known(session, skein).holds();
    return holds.isPositive() ? Optional.of(new Transfer(skein.code(), new Place.Maker(), new Place.Shelf(), holds)) : Optional.empty();
  }

  private void measure(Session session, Arrival arrival) throws NotDone {
    Optional<Measures> measured = arrival.measuredAnew();
    if (measured.isPresent() && Grists.known(session, arrival.comes()).isMeasured()) {
      new Recount(studio).onArrival(session, arrival.described(studio.today()), measured.get());
    }
  }

  private static void refuse(Session session, Skein skein, Optional<Arrival> arrival, boolean first) throws NotDone {
    if (!first) {
      throw NotDone.because("{0} is given to two skeins; give each a code of its own. Nothing was changed.", skein.code());
    }
    Optional<Skein> there = session.skeins().find(skein.code());
    Skein known = Grists.known(session, skein);
    boolean same = arrival.isPresent() ? arrival.get().anotherYarn().isEmpty() : !known.isMeasured() && session.skeins().wasEver(skein);
    if (there.isPresent() && !same) {
      throw NotDone.because("There is another skein {0} already, {1}; give another code. Nothing was changed.", skein.code(), there.get().yarn());
    }
    if (known.isMeasured() && known.holds().isZero()) {
      throw NotDone.because("{0} has nothing on it; leave its length out where it is not known. Nothing was changed.", skein.code());
    }
  }
}
