package hankbook.studio;

import hankbook.ledger.ChainedEntry;
import hankbook.ledger.EntryKind;
import hankbook.ledger.Place;
import hankbook.ledger.Transfer;
import hankbook.measure.Phrase;
import hankbook.store.Session;
import java.util.List;
import java.util.Optional;
import java.util.UUID;

/** Moves all that a plan has at one place to another. */
record PlanYarn(Studio studio, EntryKind kind, Place from, Place to) {
  Optional<ChainedEntry> move(UUID id, Phrase nothingThere) throws NotDone {
    return studio.write(session -> move(session, id, nothingThere));
  }

  Optional<ChainedEntry> move(Session session, UUID id, Phrase nothingThere) throws NotDone {
    if (session.entries().entry(id).isPresent()) {
      return Optional.empty();
    }
    List<Transfer> transfers =
        session.balances().ofPlan(from.planName()).lengths().entrySet().stream()
            .filter(balance -> balance.getKey().place().equals(from) && balance.getValue().isPositive())
            .map(balance -> new Transfer(balance.getKey().skein(), from, to, balance.getValue()))
            .toList();
    if (transfers.isEmpty()) {
      throw NotDone.because(nothingThere);
    }
    return studio.post(session, id, kind, "", transfers);
  }
}
