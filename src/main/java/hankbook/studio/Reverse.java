package hankbook.studio;

import hankbook.ledger.ChainedEntry;
import hankbook.ledger.Entry;
import hankbook.ledger.Transfer;
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
    Entry reversal = Entry.reversing(original.get(), id, studio.today(), studio.author(), Note.of(reason));
    refuseIfItReachesNoPlan(session, reversal);
    Optional<ChainedEntry> posted = session.entries().post(reversal, studio.now());
    if (posted.isPresent()) {
      new RewoundLots(studio, session).after(original.get(), reversal);
    }
    return posted;
  }

  /** Yarn under a plan that is not on the list could be released by nobody. */
  private static void refuseIfItReachesNoPlan(Session session, Entry reversal) throws NotDone {
    for (Transfer transfer : reversal.transfers()) {
      String plan = transfer.to().planName();
      if (!plan.isEmpty() && Plans.text(session, plan).isEmpty()) {
        throw NotDone.because(
            "Taking this back would put yarn under the plan " + plan + ", which was put away or given another name; add a plan of that name first.");
      }
    }
  }
}
