package hankbook.studio;

import hankbook.allot.Cover;
import hankbook.allot.PlanCheck;
import hankbook.allot.Verdict;
import hankbook.exchange.BadInput;
import hankbook.ledger.ChainedEntry;
import hankbook.ledger.EntryKind;
import hankbook.measure.Phrase;
import hankbook.store.Session;
import hankbook.yarn.OneLine;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.UUID;

/** Promises the yarn that a plan's check chose to that plan, so that no other plan takes it. */
public final class Reserve {
  private final Studio studio;

  public Reserve(Studio studio) {
    this.studio = studio;
  }

  /**
   * Brings what is reserved for a plan to what its check says now: what lacks is reserved, what is no longer wanted is released. What is on its loom
   * already counts as taken, whichever skeins the check would choose today.
   *
   * @param evenIfShort whether to reserve what there is of a plan that is short
   * @return what was entered; nothing where all was reserved already
   * @throws BadInput if there is no such plan, or it cannot be reckoned
   * @throws NotDone if a yarn is short, or the book of the plan is squared
   */
  public List<ChainedEntry> plan(UUID id, String name, boolean evenIfShort) throws BadInput, NotDone {
    return studio.write(session -> reserve(session, id, name, evenIfShort));
  }

  /**
   * The same for a plan as it was seen.
   *
   * @param version of the plan that was seen
   * @throws NotDone also if the plan was changed since
   */
  public List<ChainedEntry> plan(UUID id, String name, int version, boolean evenIfShort) throws BadInput, NotDone {
    return studio.write(session -> {
      Plans.refuseUnlessNewest(session, name, version);
      return reserve(session, id, name, evenIfShort);
    });
  }

  private List<ChainedEntry> reserve(Session session, UUID id, String name, boolean evenIfShort) throws BadInput, NotDone {
    if (session.entries().entry(id).isPresent()) {
      return List.of();
    }
    FinishedPlans.refuseIfSquared(session, OneLine.of(name));
    PlanCheck check = CheckPlan.named(studio, name, session).check();
    if (check.isShort() && !evenIfShort) {
      throw NotDone.shortOfYarn(Phrase.of("Nothing was reserved for {0}, since it is short: {1}.", check.plan().name(), shortages(check)));
    }
    Reservation reservation = Reservation.of(check, Shelf.everySkein(session));
    if (check.isShort() && reservation.isNothingAtAll()) {
      throw NotDone.shortOfYarn(Phrase.of("There is nothing to reserve for {0}, since it is short: {1}.", check.plan().name(), shortages(check)));
    }
    List<ChainedEntry> entered = new ArrayList<>();
    studio.post(session, releaseBeside(id), EntryKind.RELEASE, "no longer wanted by the plan", reservation.unwanted()).ifPresent(entered::add);
    studio.post(session, id, EntryKind.RESERVE, "", reservation.lacking()).ifPresent(entered::add);
    return entered;
  }

  /** The id of the entry that released what a plan no longer wanted, when an entry reserved what it lacked. */
  static UUID releaseBeside(UUID id) {
    return UUID.nameUUIDFromBytes(("released beside " + id).getBytes(StandardCharsets.UTF_8));
  }

  private static Phrase.Listed shortages(PlanCheck check) {
    List<Object> yarns = check.covers().stream().filter(cover -> cover.verdict() == Verdict.SHORT).<Object>map(Reserve::shortage).toList();
    return new Phrase.Listed(yarns, "; ");
  }

  private static Phrase shortage(Cover cover) {
    return cover.margin().isNegative()
        ? Phrase.of("{0} by {1}", cover.yarn(), Phrase.yarn(cover.margin().negated(), 1))
        : Phrase.of("{0} has the metres but not in whole ends", cover.yarn());
  }
}
