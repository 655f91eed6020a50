package hankbook.studio;

import hankbook.allot.Judgement;
import hankbook.ledger.Balances;
import hankbook.ledger.Place;
import hankbook.measure.Length;
import hankbook.store.Session;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;

/** Holds all plans of the ledger against the shelf together, one after another, and changes the order in which they take their yarn. */
public final class QueuePlans {
  private final Studio studio;

  public QueuePlans(Studio studio) {
    this.studio = studio;
  }

  /**
   * An order of plans, and another.
   *
   * @param before in the order kept
   * @param after in the other order
   */
  public record Compared(PlanQueue before, PlanQueue after) {
    /** What the other order changes. */
    public List<PlanQueue.Change> changes() {
      return before.changesIn(after);
    }
  }

  private record Found(List<TakingTurns.Waiting> plans, List<ShelfSkein> skeins, Judgement judgement, List<ExpectedSkein> counted) {}

  /** The plans in the order kept. */
  public PlanQueue all(ExpectedBy by) {
    return run(studio.read(session -> found(session, PlanTurns.of(session), by)));
  }

  /**
   * What moving a plan would change; nothing is kept.
   *
   * @throws NotDone if one of the two plans is not in the ledger
   */
  public Compared tried(PlanMove move, ExpectedBy by) throws NotDone {
    List<String> turns = studio.read(PlanTurns::of);
    return compared(turns, PlanTurns.moved(turns, move), by);
  }

  /**
   * Moves a plan, and says what that changed.
   *
   * @throws NotDone if one of the two plans is not in the ledger
   */
  public Compared moved(PlanMove move, ExpectedBy by) throws NotDone {
    record Turns(List<String> before, List<String> after) {}
    Turns turns = studio.write(session -> {
      List<String> before = PlanTurns.of(session);
      List<String> after = PlanTurns.moved(before, move);
      session.turns().keep(after, studio.author(), studio.now());
      return new Turns(before, after);
    });
    return compared(turns.before(), turns.after(), by);
  }

  private Compared compared(List<String> before, List<String> after, ExpectedBy by) {
    return new Compared(run(studio.read(session -> found(session, before, by))), run(studio.read(session -> found(session, after, by))));
  }

  private static Found found(Session session, List<String> turns, ExpectedBy by) {
    Set<String> woven = woven(session.balances().all());
    List<TakingTurns.Waiting> plans =
        turns.stream()
            .flatMap(name -> Plans.text(session, name).stream().map(text -> new TakingTurns.Waiting(name, text, woven.contains(name))))
            .toList();
    List<ExpectedSkein> counted = ExpectedYarn.counted(session, by);
    return new Found(plans, ExpectedYarn.everySkein(session, counted), Settings.judgement(session), counted);
  }

  private static Set<String> woven(Balances balances) {
    Set<String> plans = new TreeSet<>();
    balances.lengths().forEach((holding, length) -> {
      if (holding.place() instanceof Place.Cloth(String plan) && length.compareTo(Length.ZERO) > 0) {
        plans.add(plan);
      }
    });
    return plans;
  }

  private static PlanQueue run(Found found) {
    TakingTurns turns = new TakingTurns(found.skeins(), found.judgement());
    List<String> open =
        found.plans().stream().filter(plan -> turns.stands(plan) == QueuedPlan.Stands.OPEN).map(TakingTurns.Waiting::name).toList();
    var free = turns.freeFor(open);
    return new PlanQueue(found.plans().stream().map(turns::next).toList(), found.counted(), free);
  }
}
