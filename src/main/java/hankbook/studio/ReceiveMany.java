package hankbook.studio;

import hankbook.ledger.EntryKind;
import hankbook.ledger.Place;
import hankbook.ledger.Transfer;
import hankbook.measure.Length;
import hankbook.store.Session;
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
   * Receives skeins that the ledger does not know yet, on the day that the first of them came. Those whose length is not known are written down and count as
   * nothing until they are measured. Where the same were received so before, nothing is done.
   *
   * @throws NotDone naming the first that cannot be taken: its code is taken or given twice, it has nothing on it, or its cost is in another currency than the ledger's
   */
  public void skeins(UUID id, List<Skein> skeins) throws NotDone {
    studio.write(session -> {
      boolean done = session.entries().entry(id).isPresent() || (!skeins.isEmpty() && skeins.stream().allMatch(session.skeins()::wasEver));
      return done ? Optional.empty() : receive(session, id, skeins);
    });
  }

  private Optional<?> receive(Session session, UUID id, List<Skein> skeins) throws NotDone {
    CostSaid costs = new CostSaid(session);
    Set<String> codes = new HashSet<>();
    List<Transfer> transfers = new ArrayList<>();
    for (Skein skein : skeins) {
      refuse(session, skein, codes.add(skein.code()));
      costs.refuse(skein.code(), Optional.empty(), skein.cost());
      session.skeins().add(skein, studio.now());
      Length holds = Grists.known(session, skein).holds();
      if (holds.isPositive()) {
        transfers.add(new Transfer(skein.code(), new Place.Maker(), new Place.Shelf(), holds));
      }
    }
    LocalDate came = skeins.stream().findFirst().flatMap(Skein::received).orElse(studio.today());
    return studio.post(session, id, EntryKind.RECEIVE, came, "", transfers);
  }

  private static void refuse(Session session, Skein skein, boolean first) throws NotDone {
    if (!first) {
      throw NotDone.because("{0} is given to two skeins; give each a code of its own. Nothing was changed.", skein.code());
    }
    Optional<Skein> there = session.skeins().find(skein.code());
    if (there.isPresent()) {
      throw NotDone.because("There is another skein {0} already, {1}; give another code. Nothing was changed.", skein.code(), there.get().yarn());
    }
    Skein known = Grists.known(session, skein);
    if (known.isMeasured() && known.holds().isZero()) {
      throw NotDone.because("{0} has nothing on it; leave its length out where it is not known. Nothing was changed.", skein.code());
    }
  }
}
