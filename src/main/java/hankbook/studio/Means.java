package hankbook.studio;

import hankbook.allot.GearWarnings;
import hankbook.allot.Judgement;
import hankbook.allot.PlanCheck;
import hankbook.gear.Gear;
import hankbook.plan.Plan;
import hankbook.store.Session;
import hankbook.yarn.Skein;
import java.util.List;

/**
 * What a plan is held against.
 *
 * @param stock every skein, with what of it is free for the plan
 * @param judgement by which it is judged
 * @param gear the looms and reeds there are
 */
record Means(List<Skein> stock, Judgement judgement, Gear gear) {
  Means {
    stock = List.copyOf(stock);
  }

  /** What a ledger has for a plan. */
  static Means of(Session session, String plan) {
    return new Means(Shelf.freeFor(plan, session), Settings.judgement(session), OwnGear.of(session));
  }

  /** Without a ledger: nothing is set, and nothing known of looms and reeds. */
  static Means of(List<Skein> stock) {
    return new Means(stock, Judgement.DEFAULT, Gear.UNKNOWN);
  }

  /** Holds a plan against them. */
  PlanCheck check(Plan plan) {
    return PlanCheck.of(plan, stock, judgement).heldAgainst(gear, GearWarnings.TOLERANCE);
  }
}
