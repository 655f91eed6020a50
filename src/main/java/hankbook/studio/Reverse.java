package hankbook.studio;

import hankbook.ledger.ChainedEntry;
import hankbook.ledger.Entry;
import hankbook.ledger.Transfer;
import hankbook.store.ActualsVersion;
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
   * @throws NotDone if there is none, it was taken back before, its yarn has gone elsewhere since, or it squares the book of a plan
   */
  public Optional<ChainedEntry> entry(UUID id, UUID original, String reason) throws NotDone {
    return studio.write(session -> reverse(session, id, session.entries().entry(original), reason));
  }

  /**
   * Takes back the entry with a number of the journal.
   *
   * @param reason not blank
   * @throws NotDone if there is none, it was taken back before, its yarn has gone elsewhere since, or it squares the book of a plan
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
    return reverse(session, id, original.get(), reason);
  }

  /** Takes back one entry that is in the ledger. */
  Optional<ChainedEntry> reverse(Session session, UUID id, Entry original, String reason) throws NotDone {
    Entry reversal = possible(session, id, original, reason);
    Optional<ChainedEntry> posted = session.entries().post(reversal, studio.now());
    if (posted.isPresent()) {
      new RewoundLots(studio, session).after(original, reversal);
    }
    return posted;
  }

  /** The reversal, where nothing but the rules of the ledger could refuse it. */
  Entry possible(Session session, UUID id, Entry original, String reason) throws NotDone {
    refuseIfPartOfAFinish(session, id, original);
    Entry reversal = Entry.reversing(original, id, studio.today(), studio.author(), Note.of(reason));
    refuseIfItReachesNoPlan(session, reversal);
    return reversal;
  }

  /** What squares the book of a plan stands and falls as a whole, or what was found would no longer say what the book says. */
  private static void refuseIfPartOfAFinish(Session session, UUID id, Entry original) throws NotDone {
    if (session.entries().entry(id).isPresent() || session.entries().isReversed(original.id())) {
      return;
    }
    Entry first = original;
    boolean takesBack = true;
    while (first.reverses().isPresent()) {
      first = session.entries().entry(first.reverses().get()).orElseThrow();
      takesBack = !takesBack;
    }
    Optional<ActualsVersion> finish = session.actuals().posting(first.id());
    if (finish.isPresent()) {
      refuse(session, finish.get().plan(), first, takesBack);
    }
  }

  private static void refuse(Session session, String plan, Entry first, boolean takesBack) throws NotDone {
    boolean squares = session.actuals().standing(plan).filter(now -> now.entries().contains(first.id())).isPresent();
    if (squares && takesBack) {
      throw NotDone.because("That entry squares the book of {0} together with others; take back the whole under After the cloth, or by finish "
            + "--take-back. Nothing was changed.", plan);
    }
    if (!squares && !takesBack) {
      throw NotDone.because("That entry squared the book of {0} together with others, and was taken back with them; finish {1} anew instead. "
            + "Nothing was changed.", plan, plan);
    }
  }

  /** Yarn under a plan that is not on the list could be released by nobody. */
  private static void refuseIfItReachesNoPlan(Session session, Entry reversal) throws NotDone {
    for (Transfer transfer : reversal.transfers()) {
      String plan = transfer.to().planName();
      if (!plan.isEmpty() && Plans.text(session, plan).isEmpty()) {
        throw NotDone.because(
            "Taking this back would put yarn under the plan {0}, which was put away or given another name; add a plan of that name first.", plan);
      }
    }
  }
}
