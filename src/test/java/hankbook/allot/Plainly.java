package hankbook.allot;

import hankbook.plan.Plan;
import hankbook.yarn.Skein;
import java.util.List;

/** Plans held against skeins where nothing is set. */
final class Plainly {
  private Plainly() {}

  static Fit fit(Plan plan, List<Skein> stock) {
    return Fit.of(plan, stock, Judgement.DEFAULT);
  }

  static PlanCheck check(Plan plan, List<Skein> stock) {
    return PlanCheck.of(plan, stock, Judgement.DEFAULT);
  }
}
