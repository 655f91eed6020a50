package hankbook.studio;

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
 * @param counted the yarn on order that is in the stock as though it had come
 */
record Means(List<Skein> stock, Judgement judgement, Gear gear, List<ExpectedSkein> counted) {
  Means {
    stock = List.copyOf(stock);
    counted = List.copyOf(counted);
  }

  /** With nothing on order that counts. */
  Means(List<Skein> stock, Judgement judgement, Gear gear) {
    this(stock, judgement, gear, List.of());
  }

  /** What a ledger has for a plan. */
  static Means of(Session session, String plan) {
    return of(session, plan, ExpectedBy.NOTHING);
  }

  /** What a ledger has for a plan once some of the yarn on order has come. */
  static Means of(Session session, String plan, ExpectedBy by) {
    List<ExpectedSkein> counted = ExpectedYarn.counted(session, by);
    return new Means(Shelf.freeFor(plan, ExpectedYarn.everySkein(session, counted)), Settings.judgement(session), OwnGear.of(session), counted);
  }

  /** Without a ledger: nothing is set, and nothing known of looms and reeds. */
  static Means of(List<Skein> stock) {
    return new Means(stock, Judgement.DEFAULT, Gear.UNKNOWN);
  }

  /** Holds a plan against them. */
  PlanCheck check(Plan plan) {
    return PlanCheck.of(plan, stock, judgement).heldAgainst(gear, judgement.settTolerance());
  }
}
