package hankbook.allot;

import hankbook.plan.Plan;
import hankbook.yarn.Skein;
import hankbook.yarn.YarnColour;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.OptionalLong;
import java.util.Set;
import java.util.function.Predicate;

/**
 * Finds every remedy for a plan that is short, each tried by the same check: for all its short yarns together where that can be, else for
 * each of them alone.
 */
public final class Remedies {
  private final PlanCheck check;
  private final Trial trial;
  private final List<YarnColour> lacking;

  private Remedies(PlanCheck check, Trial trial) {
    this.check = check;
    this.trial = trial;
    this.lacking = check.shortYarns();
  }

  /**
   * The remedies, the least change first; none where the plan is not short.
   *
   * @param check the plan held against these skeins
   * @param stock what is free
   * @param judgement by which it is judged
   */
  public static List<Remedy> of(PlanCheck check, List<Skein> stock, Judgement judgement) {
    return of(check, new Trial(stock, judgement), StandIns.of(check, stock, judgement), Purchase.of(check, stock, judgement));
  }

  static List<Remedy> of(PlanCheck check, Trial trial, List<StandIn> standIns, List<Purchase> purchases) {
    if (!check.isShort()) {
      return List.of();
    }
    Remedies remedies = new Remedies(check, trial);
    List<Remedy> all = new ArrayList<>();
    Lever.of(check).forEach(lever -> all.addAll(remedies.by(lever)));
    standIns.stream().filter(StandIn::covers).forEach(standIn -> all.add(remedies.forOne(new Change.OtherYarn(standIn), standIn.plan(), standIn.place())));
    all.addAll(remedies.byBuying(purchases));
    return all.stream().sorted(Remedy.LEAST_CHANGE_FIRST).toList();
  }

  private List<Remedy> by(Lever lever) {
    OptionalLong whole = steps(lever, Set::isEmpty);
    if (whole.isPresent()) {
      return List.of(remedy(lever, whole.getAsLong()));
    }
    Set<Remedy> alone = new LinkedHashSet<>();
    if (lacking.size() > 1) {
      lacking.forEach(yarn -> steps(lever, left -> !left.contains(yarn) && lacking.containsAll(left)).ifPresent(steps -> alone.add(remedy(lever, steps))));
    }
    return List.copyOf(alone);
  }

  /** The most steps that leave only such yarns short. */
  private OptionalLong steps(Lever lever, Predicate<Set<YarnColour>> does) {
    return Largest.under(lever.asked(), lever.least(), steps -> does.test(trial.left(lever.plan().apply(steps))));
  }

  private Remedy remedy(Lever lever, long steps) {
    Plan changed = lever.plan().apply(steps);
    Set<YarnColour> left = trial.left(changed);
    return new Remedy(lever.change().apply(changed), changed, lacking.stream().filter(yarn -> !left.contains(yarn)).toList(), left.isEmpty());
  }

  private List<Remedy> byBuying(List<Purchase> purchases) {
    List<Purchase> known = purchases.stream().filter(purchase -> purchase.putUps().isPresent()).toList();
    List<Remedy> buying = new ArrayList<>();
    if (known.size() > 1 && known.size() == lacking.size()) {
      buying.add(new Remedy(new Change.Buying(known), check.plan(), lacking, true));
    }
    known.forEach(purchase -> buying.add(forOne(new Change.Buying(List.of(purchase)), check.plan(), purchase.yarn())));
    return buying;
  }

  private Remedy forOne(Change change, Plan plan, YarnColour yarn) {
    return new Remedy(change, plan, List.of(yarn), lacking.size() == 1);
  }
}
