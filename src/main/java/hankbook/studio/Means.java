package hankbook.studio;

import hankbook.allot.Judgement;
import hankbook.allot.PlanCheck;
import hankbook.gear.Gear;
import hankbook.plan.NeedSpread;
import hankbook.plan.Plan;
import hankbook.reckon.Findings;
import hankbook.reckon.Manner;
import hankbook.reckon.Sensitivity;
import hankbook.store.Session;
import hankbook.yarn.Skein;
import hankbook.yarn.YarnColour;
import java.util.List;
import java.util.Set;
import java.util.function.Predicate;

/**
 * What a plan is held against.
 *
 * @param stock every skein, with what of it is free for the plan
 * @param judgement by which it is judged
 * @param gear the looms and reeds there are
 * @param counted the yarn on order that is in the stock as though it had come
 * @param learnt what finished plans taught
 */
record Means(List<Skein> stock, Judgement judgement, Gear gear, List<ExpectedSkein> counted, Findings learnt) {
  Means {
    stock = List.copyOf(stock);
    counted = List.copyOf(counted);
  }

  /** With nothing on order that counts. */
  Means(List<Skein> stock, Judgement judgement, Gear gear, Findings learnt) {
    this(stock, judgement, gear, List.of(), learnt);
  }

  /** What a ledger has for a plan. */
  static Means of(Studio studio, Session session, String plan) {
    return of(studio, session, plan, ExpectedBy.NOTHING);
  }

  /** What a ledger has for a plan once some of the yarn on order has come. */
  static Means of(Studio studio, Session session, String plan, ExpectedBy by) {
    List<ExpectedSkein> counted = ExpectedYarn.counted(session, by);
    List<Skein> stock = Shelf.freeFor(plan, ExpectedYarn.everySkein(session, counted));
    return new Means(stock, Settings.judgement(session), OwnGear.of(session), counted, studio.learnt().findings(session));
  }

  /** What a ledger has for a plan that is one of several that might be woven, of which no other keeps yarn from it that is only set aside. */
  static Means among(Studio studio, Session session, String plan, Set<String> others) {
    List<ShelfSkein> skeins = ExpectedYarn.everySkein(session, List.of());
    List<Skein> stock = Shelf.freeFor(plan, skeins.stream().map(skein -> skein.released(others)).toList());
    return new Means(stock, Settings.judgement(session), OwnGear.of(session), studio.learnt().findings(session));
  }

  /** Without a ledger: nothing is set or learnt, and nothing known of looms and reeds. */
  static Means of(List<Skein> stock) {
    return new Means(stock, Judgement.DEFAULT, Gear.UNKNOWN, Findings.NONE);
  }

  /** Holds a plan against them. */
  PlanCheck check(Plan plan) {
    NeedSpread spread = learnt.equals(Findings.NONE) ? NeedSpread.UNKNOWN : new Sensitivity(plan, learnt, manner(plan)).spread();
    return PlanCheck.of(plan, stock, judgement, spread).heldAgainst(gear, judgement.settTolerance());
  }

  /** How a plan's cloth is to be made, as far as plan and stock say. */
  Manner manner(Plan plan) {
    return Manner.of(plan, this::fibre);
  }

  /** Of another colour where none of its own says it. */
  private String fibre(YarnColour yarn) {
    String own = fibre(skein -> skein.yarn().equals(yarn));
    return own.isEmpty() ? fibre(skein -> skein.yarn().yarn().equals(yarn.yarn())) : own;
  }

  private String fibre(Predicate<Skein> of) {
    return stock.stream().filter(of).map(Skein::fibre).filter(fibre -> !fibre.isEmpty()).findFirst().orElse("");
  }
}
