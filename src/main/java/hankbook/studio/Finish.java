package hankbook.studio;

import hankbook.exchange.ActualsFile;
import hankbook.exchange.BadInput;
import hankbook.ledger.ChainedEntry;
import hankbook.ledger.Entry;
import hankbook.measure.LengthUnit;
import hankbook.measure.Phrase;
import hankbook.reckon.Actuals;
import hankbook.store.ActualsVersion;
import hankbook.store.Session;
import hankbook.yarn.OneLine;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.UUID;
import java.util.stream.Collectors;

/**
 * Squares the book after a cloth was cut off: posts what came back, what went into samples and thrums and what was woven, so that the loom comes out empty
 * and nothing stays reserved, and keeps what was found.
 */
public final class Finish {
  private final Studio studio;

  public Finish(Studio studio) {
    this.studio = studio;
  }

  /**
   * What was posted.
   *
   * @param entered the entries, first to last; none where the same was done before, or what squares the book stays as it is
   * @param finishing what it came to; empty where it was taken back, or the same was done before
   */
  public record Finished(List<ChainedEntry> entered, Optional<Finishing> finishing) {
    public Finished {
      entered = List.copyOf(entered);
    }
  }

  /**
   * What finishing a plan would come to, as though it had not been finished before; nothing is posted.
   *
   * @throws BadInput if there is no such plan, or it cannot be reckoned
   * @throws NotDone if the book cannot be squared by what was found, or yarn that this would move has gone elsewhere since it was finished before
   */
  public Finishing preview(String plan, Actuals actuals) throws BadInput, NotDone {
    String name = OneLine.of(plan);
    return studio.tried(session -> {
      Optional<FormerFinish> former = FormerFinish.of(session, name);
      Finishing finishing = new FinishWork(studio, session, name).finishing(actuals, former);
      if (former.isPresent() && !former.get().isSquaredBy(finishing, actuals)) {
        former.get().refuseIfGone(finishing);
      }
      return finishing;
    });
  }

  /**
   * Finishes a plan.
   *
   * @throws BadInput if there is no such plan, or it cannot be reckoned
   * @throws NotDone if it was finished before, the book cannot be squared by what was found, or more cannot be explained than may without a reason
   */
  public Finished plan(UUID id, String plan, Actuals actuals) throws BadInput, NotDone {
    String name = OneLine.of(plan);
    return studio.write(session -> {
      if (isDone(session, id, name, actuals)) {
        return new Finished(List.of(), Optional.empty());
      }
      Optional<ActualsVersion> former = session.actuals().standing(name);
      if (former.isPresent()) {
        throw NotDone.because("{0} was finished already, by {1}; finish it again with a reason, or take that back.", name, former.get().author());
      }
      return finish(session, id, name, actuals);
    });
  }

  /**
   * Takes back what finished a plan and finishes it anew, by what was left when its cloth was cut off: what was taken off a skein since is no part of it. Where
   * that would move the same yarn again, nothing is posted, and only what else was found is kept. Without a date the day of the former finish holds.
   *
   * @param reason why; not blank
   * @throws NotDone also if it was not finished, or its yarn has gone elsewhere since
   */
  public Finished again(UUID id, String plan, Actuals actuals, String reason) throws BadInput, NotDone {
    return again(id, OneLine.of(plan), actuals, reason, OptionalInt.empty());
  }

  /**
   * The same for a finish as it was seen.
   *
   * @param version of what was found that was seen
   * @throws NotDone also if it was finished by another version since
   */
  public Finished again(UUID id, String plan, Actuals actuals, String reason, int version) throws BadInput, NotDone {
    return again(id, OneLine.of(plan), actuals, reason, OptionalInt.of(version));
  }

  private Finished again(UUID id, String name, Actuals actuals, String reason, OptionalInt seen) throws BadInput, NotDone {
    String why = reason(reason, Phrase.of("Say why it is finished again; the journal keeps the reason."));
    return studio.write(session -> {
      if (isDone(session, id, name, actuals)) {
        return new Finished(List.of(), Optional.empty());
      }
      FormerFinish former = former(session, name);
      if (seen.isPresent() && seen.getAsInt() != former.version().number()) {
        throw NotDone.because("{0} was finished meanwhile, by {1}; open it again to see by what. Nothing was changed.", name, former.version().author());
      }
      return finishAgain(session, id, name, actuals, former, why);
    });
  }

  /**
   * Takes back what finished a plan, so that its yarn is on the loom again.
   *
   * @param reason why; not blank
   * @throws NotDone if it was not finished, or its yarn has gone elsewhere since
   */
  public Finished takeBack(UUID id, String plan, String reason) throws NotDone {
    String name = OneLine.of(plan);
    String why = reason(reason, Phrase.of("Say why it is taken back; the journal keeps the reason."));
    return studio.write(session -> {
      if (session.actuals().of(id).isPresent()) {
        return new Finished(List.of(), Optional.empty());
      }
      List<ChainedEntry> entered = new FinishWork(studio, session, name).takeBack(id, former(session, name), _ -> studio.today(), why);
      keep(session, name, ActualsVersion.Deed.TAKEN_BACK, id, OptionalInt.empty(), "", why, entered);
      return new Finished(entered, Optional.empty());
    });
  }

  private static String reason(String reason, Phrase wanted) throws NotDone {
    String why = Note.of(reason);
    if (why.isEmpty()) {
      throw NotDone.because(wanted);
    }
    return why;
  }

  private static FormerFinish former(Session session, String name) throws NotDone {
    Optional<FormerFinish> former = FormerFinish.of(session, name);
    if (former.isEmpty()) {
      throw NotDone.because("{0} was not finished, so there is nothing to take back.", name);
    }
    return former.get();
  }

  /** The same by the same id is done already; something else by it is a mistake. */
  private boolean isDone(Session session, UUID id, String name, Actuals actuals) throws NotDone {
    Optional<ActualsVersion> done = session.actuals().of(id);
    if (done.isEmpty()) {
      return false;
    }
    Optional<ActualsFile> kept = FinishedPlans.file(done.get());
    boolean same = done.get().plan().equals(name) && kept.filter(file -> same(file.actuals(), actuals)).isPresent();
    if (!same) {
      throw NotDone.because("Something else was done under this id; nothing was changed.");
    }
    return true;
  }

  private static boolean same(Actuals kept, Actuals given) {
    return kept.equals(given.date().isPresent() || kept.date().isEmpty() ? given : given.dated(kept.date().get()));
  }

  private Finished finish(Session session, UUID id, String name, Actuals actuals) throws BadInput, NotDone {
    FinishWork work = new FinishWork(studio, session, name);
    Finishing finishing = work.finishing(actuals, Optional.empty());
    refuseWithoutReason(finishing, actuals);
    List<ChainedEntry> posted = work.post(id, finishing, actuals);
    keep(session, id, finishing, actuals, "", posted);
    return new Finished(posted, Optional.of(finishing));
  }

  /** What took an entry back bears the day of that entry, so that on no day between the yarn counts twice. */
  private Finished finishAgain(Session session, UUID id, String name, Actuals actuals, FormerFinish former, String why) throws BadInput, NotDone {
    FinishWork work = new FinishWork(studio, session, name);
    Finishing finishing = work.finishing(actuals, Optional.of(former));
    refuseWithoutReason(finishing, actuals);
    if (former.isSquaredBy(finishing, actuals)) {
      keep(session, id, finishing, actuals, why, List.of());
      return new Finished(List.of(), Optional.of(finishing));
    }
    former.refuseIfGone(finishing);
    List<ChainedEntry> entered = new ArrayList<>(work.takeBack(id, former, Entry::date, why));
    List<ChainedEntry> posted = work.post(id, finishing, actuals);
    keep(session, id, finishing, actuals, why, posted);
    entered.addAll(posted);
    return new Finished(entered, Optional.of(finishing));
  }

  private void keep(Session session, UUID id, Finishing finishing, Actuals actuals, String why, List<ChainedEntry> posted) {
    String body = new ActualsFile(Optional.of(finishing.plan()), actuals.dated(finishing.date())).json();
    keep(session, finishing.plan(), ActualsVersion.Deed.SQUARED, id, OptionalInt.of(finishing.planVersion()), body, why, posted);
  }

  private static void refuseWithoutReason(Finishing finishing, Actuals actuals) throws NotDone {
    List<UsedAgainstPlan> wanting = finishing.wantingReason();
    if (!wanting.isEmpty() && actuals.reason().isBlank()) {
      Phrase.Listed yarns = new Phrase.Listed(wanting.stream().<Object>map(Finish::unexplained).toList(), "; ");
      throw NotDone.because("What was used cannot be explained without a reason: {0}. Look at what was measured again, or give a reason. "
          + "Nothing was posted.", yarns);
    }
  }

  private static Phrase unexplained(UsedAgainstPlan yarn) {
    Phrase.As mayStay = Phrase.yarn(yarn.mayStay(), 1);
    return yarn.unexplained().isNegative()
        ? Phrase.of("{0} {1} less than explained, and {2} may stay so", yarn.yarn(), Phrase.yarn(yarn.unexplained().negated(), 1), mayStay)
        : Phrase.of("{0} {1} more than explained, and {2} may stay so", yarn.yarn(), Phrase.yarn(yarn.unexplained(), 1), mayStay);
  }

  private void keep(
      Session session, String name, ActualsVersion.Deed deed, UUID act, OptionalInt planVersion, String body, String why, List<ChainedEntry> entries) {
    session.actuals().add(new ActualsVersion(
        name, session.actuals().next(name), deed, Optional.of(act), planVersion, body, why, entries.stream().map(entry -> entry.entry().id()).toList(), studio.author(), studio.now()));
  }
}
