package hankbook.studio;

import hankbook.exchange.ActualsDraft;
import hankbook.exchange.ActualsFile;
import hankbook.exchange.ActualsPart;
import hankbook.measure.Unreadable;
import hankbook.store.ActualsVersion;
import hankbook.store.RecordedEntry;
import hankbook.store.Session;
import hankbook.yarn.OneLine;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.List;
import java.util.Optional;

/** Tells how far a plan has come and when, by what the ledger says of it. */
public final class FollowPlan {
  private final Studio studio;

  public FollowPlan(Studio studio) {
    this.studio = studio;
  }

  /** Every step of a plan, in their order, those to come too. */
  public List<PlanStep> named(String plan) {
    String name = OneLine.of(plan);
    return studio.read(session -> PlanSteps.of(
        name, session.plans().begun(name).map(studio::dayOf), session.entries().ofPlan(name).stream().map(RecordedEntry::chained).toList(), ending(session, name)));
  }

  private PlanSteps.Ending ending(Session session, String name) {
    Optional<ActualsVersion> squared = session.actuals().standing(name);
    if (squared.isPresent()) {
      Optional<LocalDate> date = FinishedPlans.file(squared.get()).map(ActualsFile::actuals).flatMap(actuals -> actuals.date());
      return new PlanSteps.Ending(true, date, true, Optional.of(studio.dayOf(squared.get().recorded())), squared.get().entries());
    }
    return session.actuals().draft(name).map(draft -> new PlanSteps.Ending(true, date(draft), false, Optional.empty(), List.of())).orElse(PlanSteps.Ending.NONE);
  }

  /** The day that a draft says, where it can be read. */
  private static Optional<LocalDate> date(ActualsVersion draft) {
    try {
      return Optional.of(LocalDate.parse(ActualsDraft.of(draft.body()).text(ActualsPart.ACTUALS, 1, "date").strip()));
    } catch (DateTimeParseException | Unreadable unreadable) {
      return Optional.empty();
    }
  }
}
