package hankbook.studio;

import hankbook.allot.Judgement;
import hankbook.ledger.Balances;
import hankbook.ledger.Place;
import hankbook.measure.Length;
import hankbook.reckon.Findings;
import hankbook.store.Session;
import hankbook.yarn.YarnColour;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.SortedMap;
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

  /**
   * All that the queue is worked out from, as it was at one moment.
   *
   * @param turns the plans' names in the order kept
   * @param plans by name
   */
  private record Found(
      List<String> turns, Map<String, TakingTurns.Waiting> plans, List<ShelfSkein> skeins, Judgement judgement, Findings learnt, List<ExpectedSkein> counted) {}

  /** The plans in the order kept. */
  public PlanQueue all(ExpectedBy by) {
    Found found = studio.read(session -> found(session, by));
    return run(found, found.turns());
  }

  /**
   * What moving a plan would change; nothing is kept.
   *
   * @throws NotDone if one of the two plans is not in the ledger
   */
  public Compared tried(PlanMove move, ExpectedBy by) throws NotDone {
    Found found = studio.read(session -> found(session, by));
    return compared(found, PlanTurns.moved(found.turns(), move));
  }

  /**
   * Moves a plan, and says what that changed.
   *
   * @throws NotDone if one of the two plans is not in the ledger
   */
  public Compared moved(PlanMove move, ExpectedBy by) throws NotDone {
    Found found = studio.write(session -> {
      Found before = found(session, by);
      session.turns().keep(PlanTurns.moved(before.turns(), move), studio.author(), studio.now());
      return before;
    });
    return compared(found, PlanTurns.moved(found.turns(), move));
  }

  private static Compared compared(Found found, List<String> after) {
    return new Compared(run(found, found.turns()), run(found, after));
  }

  private Found found(Session session, ExpectedBy by) {
    Set<String> woven = woven(session.balances().all());
    woven.addAll(session.actuals().squared());
    Set<String> gaveBack = session.loomVisits().putBack();
    Map<String, TakingTurns.Waiting> plans = new HashMap<>();
    SortedMap<String, String> texts = Plans.texts(session);
    texts.forEach((name, text) -> plans.put(name, new TakingTurns.Waiting(name, text, woven.contains(name), gaveBack.contains(name))));
    List<ExpectedSkein> counted = ExpectedYarn.counted(session, by);
    List<String> turns = PlanTurns.of(texts.keySet(), session.turns().newest());
    return new Found(turns, plans, ExpectedYarn.everySkein(session, counted), Settings.judgement(session), studio.learnt().findings(session), counted);
  }

  private static Set<String> woven(Balances balances) {
    Set<String> plans = new TreeSet<>();
    balances.lengths().forEach((holding, length) -> {
      if (holding.place() instanceof Place.Cloth(String plan) && length.isPositive()) {
        plans.add(plan);
      }
    });
    return plans;
  }

  private static PlanQueue run(Found found, List<String> order) {
    TakingTurns turns = new TakingTurns(found.skeins(), found.judgement(), found.learnt());
    List<QueuedPlan> plans = order.stream().map(name -> turns.next(Objects.requireNonNull(found.plans().get(name)))).toList();
    List<String> asking = plans.stream().filter(QueuedPlan::takesYarn).map(QueuedPlan::name).toList();
    return new PlanQueue(plans, found.counted(), freeFor(asking, found.skeins()));
  }

  /** What is there for some plans together, by yarn. */
  private static Map<YarnColour, Length> freeFor(List<String> plans, List<ShelfSkein> skeins) {
    Map<YarnColour, Length> free = new HashMap<>();
    for (ShelfSkein held : skeins) {
      Length taken = plans.stream().map(plan -> held.freeFor(plan).minus(held.free())).reduce(Length.ZERO, Length::plus);
      free.merge(held.skein().yarn(), held.free().plus(taken), Length::plus);
    }
    return free;
  }
}
