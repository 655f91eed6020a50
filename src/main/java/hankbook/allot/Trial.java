package hankbook.allot;

import hankbook.plan.Plan;
import hankbook.yarn.Skein;
import hankbook.yarn.YarnColour;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/** Holds one changed plan after another against the same skeins, and remembers whether what it called short was settled each time. */
final class Trial {
  private final List<Skein> stock;
  private final Judgement judgement;
  private boolean proven = true;

  Trial(List<Skein> stock, Judgement judgement) {
    this.stock = stock;
    this.judgement = judgement;
  }

  /** Whether a check would say that a yarn of the plan is short. */
  boolean isShort(Plan plan) {
    return PlanCheck.shortYarns(plan, stock, judgement, this::heed).findAny().isPresent();
  }

  /** The yarns that a check of the plan would call short. */
  Set<YarnColour> left(Plan plan) {
    return new HashSet<>(PlanCheck.shortYarns(plan, stock, judgement, this::heed).toList());
  }

  private void heed(Effort spent) {
    proven &= spent.proven();
  }

  /** False where a plan was called short because the search was given up, so that more might yet fit. */
  boolean proven() {
    return proven;
  }
}
