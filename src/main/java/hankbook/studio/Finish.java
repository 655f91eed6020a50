package hankbook.studio;

import hankbook.exchange.ActualsFile;
import hankbook.exchange.BadInput;
import hankbook.ledger.ChainedEntry;
import hankbook.measure.LengthUnit;
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
   * @param entered the entries, first to last; none where the same was done before
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
   * @throws NotDone if the book cannot be squared by what was found
   */
  public Finishing preview(String plan, Actuals actuals) throws BadInput, NotDone {
    String name = OneLine.of(plan);
    return studio.tried(session -> {
      FinishWork work = new FinishWork(studio, session, name);
      Optional<ActualsVersion> former = session.actuals().standing(name);
      return work.finishing(actuals, former, former.isPresent() ? work.without(former.get()) : session.balances().all());
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
        throw NotDone.because(name + " was finished already, by " + former.get().author() + "; finish it again with a reason, or take that back.");
      }
      return finish(session, id, name, actuals, former, "", new ArrayList<>());
    });
  }

  /**
   * Takes back what finished a plan and finishes it anew.
   *
   * @param reason why; not blank
   * @throws NotDone also if it was not finished, or its yarn has gone elsewhere since
   */
  public Finished again(UUID id, String plan, Actuals actuals, String reason) throws BadInput, NotDone {
    String name = OneLine.of(plan);
    String why = reason(reason, "finished again");
    return studio.write(session -> {
      if (isDone(session, id, name, actuals)) {
        return new Finished(List.of(), Optional.empty());
      }
      ActualsVersion former = former(session, name);
      List<ChainedEntry> entered = new FinishWork(studio, session, name).takeBack(id, former, why);
      return finish(session, id, name, actuals, Optional.of(former), why, entered);
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
    String why = reason(reason, "taken back");
    return studio.write(session -> {
      if (session.actuals().of(id).isPresent()) {
        return new Finished(List.of(), Optional.empty());
      }
      List<ChainedEntry> entered = new FinishWork(studio, session, name).takeBack(id, former(session, name), why);
      keep(session, name, ActualsVersion.Deed.TAKEN_BACK, id, OptionalInt.empty(), "", why, entered);
      return new Finished(entered, Optional.empty());
    });
  }

  private static String reason(String reason, String deed) throws NotDone {
    String why = Note.of(reason);
    if (why.isEmpty()) {
      throw NotDone.because("Say why it is " + deed + "; the journal keeps the reason.");
    }
    return why;
  }

  private static ActualsVersion former(Session session, String name) throws NotDone {
    Optional<ActualsVersion> former = session.actuals().standing(name);
    if (former.isEmpty()) {
      throw NotDone.because(name + " was not finished, so there is nothing to take back.");
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

  private Finished finish(
      Session session, UUID id, String name, Actuals actuals, Optional<ActualsVersion> former, String why, List<ChainedEntry> entered) throws BadInput, NotDone {
    FinishWork work = new FinishWork(studio, session, name);
    Finishing finishing = work.finishing(actuals, former, session.balances().all());
    refuseWithoutReason(finishing, actuals);
    List<ChainedEntry> posted = work.post(id, finishing, actuals);
    String body = new ActualsFile(Optional.of(name), actuals.dated(finishing.date())).json();
    keep(session, name, ActualsVersion.Deed.SQUARED, id, OptionalInt.of(finishing.planVersion()), body, why, posted);
    List<ChainedEntry> all = new ArrayList<>(entered);
    all.addAll(posted);
    return new Finished(all, Optional.of(finishing));
  }

  private static void refuseWithoutReason(Finishing finishing, Actuals actuals) throws NotDone {
    List<UsedAgainstPlan> wanting = finishing.wantingReason();
    if (!wanting.isEmpty() && actuals.reason().isBlank()) {
      String yarns = wanting.stream().map(Finish::unexplained).collect(Collectors.joining("; "));
      throw NotDone.because("What was used cannot be explained without a reason: " + yarns + ". Look at what was measured again, or give a reason. Nothing was posted.");
    }
  }

  private static String unexplained(UsedAgainstPlan yarn) {
    boolean less = yarn.unexplained().isNegative();
    return yarn.yarn() + " " + (less ? yarn.unexplained().negated() : yarn.unexplained()).print(LengthUnit.METRE, 1) + (less ? " less" : " more") + " than explained, and "
        + yarn.mayStay().print(LengthUnit.METRE, 1) + " may stay so";
  }

  private void keep(
      Session session, String name, ActualsVersion.Deed deed, UUID act, OptionalInt planVersion, String body, String why, List<ChainedEntry> entries) {
    session.actuals().add(new ActualsVersion(
        name, session.actuals().next(name), deed, Optional.of(act), planVersion, body, why, entries.stream().map(entry -> entry.entry().id()).toList(), studio.author(), studio.now()));
  }
}
