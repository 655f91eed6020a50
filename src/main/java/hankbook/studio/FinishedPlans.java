package hankbook.studio;

import hankbook.exchange.ActualsDraft;
import hankbook.exchange.ActualsFile;
import hankbook.exchange.ActualsPart;
import hankbook.exchange.BadInput;
import hankbook.exchange.DraftRow;
import hankbook.exchange.PlanFile;
import hankbook.measure.Unreadable;
import hankbook.plan.Plan;
import hankbook.plan.Yardage;
import hankbook.reckon.Actuals;
import hankbook.reckon.DrawnSkein;
import hankbook.reckon.Made;
import hankbook.store.ActualsVersion;
import hankbook.store.PlanVersion;
import hankbook.store.Session;
import hankbook.yarn.OneLine;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;

/** The plans that were finished, what is filled in of those that are to be, and the form for it. */
public final class FinishedPlans {
  private final Studio studio;

  public FinishedPlans(Studio studio) {
    this.studio = studio;
  }

  /** Every finished plan, by name. */
  public List<FinishedPlan> all() {
    return studio.read(FinishedPlans::all);
  }

  /** One plan; empty where it was not finished, or that was taken back. */
  public Optional<FinishedPlan> named(String plan) {
    return studio.read(session -> named(session, OneLine.of(plan)));
  }

  static List<FinishedPlan> all(Session session) {
    return session.actuals().standing().values().stream().flatMap(version -> finished(session, version).stream()).toList();
  }

  static Optional<FinishedPlan> named(Session session, String plan) {
    return session.actuals().standing(plan).flatMap(version -> finished(session, version));
  }

  /** Yarn that was taken again for a plan whose book is squared could never be squared. */
  static void refuseIfSquared(Session session, String plan) throws NotDone {
    if (session.actuals().standing(plan).isPresent()) {
      throw NotDone.because("{0} was woven and its book squared; keep it under a new name to weave it again.", plan);
    }
  }

  private static Optional<FinishedPlan> finished(Session session, ActualsVersion version) {
    Optional<Actuals> actuals = file(version).map(ActualsFile::actuals);
    Optional<Plan> taken = session.plans().numbered(version.plan(), version.planVersion().orElse(0)).flatMap(kept -> plan(version.plan(), kept));
    Optional<Plan> edited = session.plans().newest(version.plan()).flatMap(kept -> plan(version.plan(), kept));
    if (actuals.isEmpty() || taken.isEmpty()) {
      return Optional.empty();
    }
    YarnsUsed used = new YarnsUsed(session, version.plan(), session.balances().all(), actuals.get(), Set.copyOf(version.entries()));
    return Optional.of(new FinishedPlan(
        version.plan(), version.number(), made(taken.get(), used), edited.map(plan -> made(plan, used)), version.reason(), version.author(), version.recorded()));
  }

  private static Made made(Plan plan, YarnsUsed used) {
    return new Made(plan, used.actuals(), used.inOrderOf(plan));
  }

  /** Empty where it cannot be read or does not add up. */
  static Optional<Plan> plan(String name, PlanVersion version) {
    try {
      Plan plan = PlanFile.read(name, version.body());
      return Yardage.of(plan).needs().isEmpty() ? Optional.empty() : Optional.of(plan);
    } catch (BadInput | Unreadable | ArithmeticException unfinished) {
      return Optional.empty();
    }
  }

  /** What was found, as it was kept. */
  static Optional<ActualsFile> file(ActualsVersion version) {
    try {
      return version.body().isEmpty() ? Optional.empty() : Optional.of(ActualsFile.read(version.plan(), version.body()));
    } catch (BadInput unreadable) {
      return Optional.empty();
    }
  }

  /** What of a plan's finish was filled in and kept last; empty where nothing was since it was finished or that was taken back. */
  public Optional<ActualsDraft> draft(String plan) {
    return studio.read(session -> session.actuals().draft(OneLine.of(plan)).map(version -> ActualsDraft.of(version.body())));
  }

  /**
   * Keeps what is filled in so far, whether or not it can be read.
   *
   * @throws NotDone if there is no such plan
   */
  public void keep(String plan, ActualsDraft draft) throws NotDone {
    String name = OneLine.of(plan);
    String body = draft.json();
    studio.write(session -> {
      if (Plans.text(session, name).isEmpty()) {
        throw NotDone.because("There is no plan {0} in the ledger.", name);
      }
      if (session.actuals().draft(name).filter(kept -> kept.body().equals(body)).isEmpty()) {
        session.actuals().add(new ActualsVersion(
            name, session.actuals().next(name), ActualsVersion.Deed.DRAFT, Optional.empty(), OptionalInt.empty(), body, "", List.of(), studio.author(), studio.now()));
      }
      return name;
    });
  }

  /**
   * A form to fill in for a plan: what its finish said where it was finished, else the skeins that are on its loom.
   *
   * @throws BadInput if there is no such plan
   * @throws NotDone if nothing is on its loom
   */
  public ActualsDraft form(String plan) throws BadInput, NotDone {
    String name = OneLine.of(plan);
    return studio.tried(session -> {
      if (Plans.text(session, name).isEmpty()) {
        throw CheckPlan.noSuchPlan(name);
      }
      Optional<ActualsVersion> finished = session.actuals().standing(name);
      return finished.isPresent() ? ActualsDraft.of(finished.get().body()) : blank(session, name);
    });
  }

  private ActualsDraft blank(Session session, String name) throws BadInput, NotDone {
    List<DraftRow> leftovers = FinishGround.of(session, name, TakenFor.of(session, name).version(session), session.balances().all()).skeins(Map.of()).stream()
        .filter(skein -> skein.onLoom().isPositive())
        .map(DrawnSkein::code)
        .map(code -> DraftRow.BLANK.with("skein", code))
        .toList();
    if (leftovers.isEmpty()) {
      throw NotDone.because("Nothing is on the loom for {0}; draw its yarn first.", name);
    }
    DraftRow head = DraftRow.BLANK.with("plan", name).with("date", studio.today().toString());
    return new ActualsDraft(Map.of(
        ActualsPart.ACTUALS, List.of(head), ActualsPart.LEFTOVERS, leftovers, ActualsPart.THRUMS, List.of(DraftRow.BLANK), ActualsPart.SAMPLES, List.of(DraftRow.BLANK)));
  }
}
