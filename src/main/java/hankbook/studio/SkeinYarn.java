package hankbook.studio;

import hankbook.ledger.ChainedEntry;
import hankbook.ledger.EntryKind;
import hankbook.ledger.Place;
import hankbook.ledger.Transfer;
import hankbook.measure.Length;
import hankbook.store.Session;
import java.util.List;
import java.util.Optional;
import java.util.UUID;

/** Moves some of one skein. */
record SkeinYarn(Studio studio, UUID id, EntryKind kind, String code, String note) {
  Optional<ChainedEntry> move(Place from, Place to, Length length) throws NotDone {
    if (!length.isPositive()) {
      throw NotDone.because("The length must be over zero; it is {0}.", length);
    }
    return studio.write(session -> move(session, from, to, length));
  }

  Optional<ChainedEntry> move(Session session, Place from, Place to, Length length) throws NotDone {
    if (session.skeins().find(code).isEmpty()) {
      throw NotDone.because("There is no skein {0} in the ledger.", code);
    }
    if (length.compareTo(Transfer.LONGEST) > 0) {
      throw NotDone.because("No skein holds {0}.", length);
    }
    boolean done = session.entries().entry(id).isPresent();
    return done ? Optional.empty() : studio.post(session, id, kind, note, List.of(new Transfer(code, from, to, length)));
  }
}
