package hankbook.studio;

import hankbook.ledger.ChainedEntry;
import hankbook.ledger.Entry;
import hankbook.store.RecordedEntry;
import hankbook.store.Session;
import java.util.Optional;
import java.util.UUID;

/** Takes an entry back by another that names it: the only way to put a mistake right. */
public final class Reverse {
  private final Studio studio;

  public Reverse(Studio studio) {
    this.studio = studio;
  }

  /**
   * Takes back the entry with an id.
   *
   * @param reason not blank
   * @throws NotDone if there is none, it was taken back before, or its yarn has gone elsewhere since
   */
  public Optional<ChainedEntry> entry(UUID id, UUID original, String reason) throws NotDone {
    return studio.write(session -> reverse(session, id, session.entries().entry(original), reason));
  }

  /**
   * Takes back the entry with a number of the journal.
   *
   * @param reason not blank
   * @throws NotDone if there is none, it was taken back before, or its yarn has gone elsewhere since
   */
  public Optional<ChainedEntry> numbered(UUID id, long number, String reason) throws NotDone {
    return studio.write(session -> reverse(session, id, session.entries().numbered(number).map(RecordedEntry::entry), reason));
  }

  private Optional<ChainedEntry> reverse(Session session, UUID id, Optional<Entry> original, String reason) throws NotDone {
    if (original.isEmpty()) {
      throw NotDone.because("There is no such entry in the journal.");
    }
    if (reason.isBlank()) {
      throw NotDone.because("Say why the entry is taken back; the journal keeps the reason.");
    }
    return session.entries().post(Entry.reversing(original.get(), id, studio.today(), studio.author(), reason.strip()), studio.now());
  }
}
