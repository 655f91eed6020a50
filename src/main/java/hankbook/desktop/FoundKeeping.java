package hankbook.desktop;

import hankbook.exchange.ActualsDraft;
import hankbook.studio.FinishedPlans;
import hankbook.studio.Studio;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;

/** Puts into the ledger what was filled in of finishes, and holds on to what the ledger would not take, so that nothing typed is lost. */
final class FoundKeeping {
  private final FinishedPlans plans;
  private final Work work;
  private final Consumer<Exception> wrong;
  private final Map<String, ActualsDraft> held = new HashMap<>();
  private final Map<String, ActualsDraft> sent = new HashMap<>();
  private int underWay;

  FoundKeeping(Studio studio, Work work, Consumer<Exception> wrong) {
    this.plans = new FinishedPlans(studio);
    this.work = work;
    this.wrong = wrong;
  }

  /** What was filled in for a plan and is not in the ledger. */
  Optional<ActualsDraft> held(String plan) {
    return Optional.ofNullable(held.get(plan));
  }

  /** Takes what a plan's form shows for what the ledger has of it. */
  void begin(String plan, ActualsDraft shown) {
    if (!held.containsKey(plan)) {
      sent.put(plan, shown);
    }
  }

  /** Keeps what a form says, unless that is there already. */
  void keep(String plan, ActualsDraft entered) {
    if (entered.equals(sent.get(plan))) {
      return;
    }
    sent.put(plan, entered);
    underWay++;
    work.run(
        () -> {
          plans.keep(plan, entered);
          return entered;
        },
        _ -> kept(plan, entered),
        trouble -> notKept(plan, entered, trouble));
  }

  /** Nothing of a plan is to be kept any more, since its book was squared with it. */
  void forget(String plan) {
    held.remove(plan);
    sent.remove(plan);
  }

  private void kept(String plan, ActualsDraft entered) {
    underWay--;
    if (entered.equals(sent.get(plan))) {
      held.remove(plan);
    }
  }

  private void notKept(String plan, ActualsDraft entered, Exception trouble) {
    underWay--;
    if (entered.equals(sent.get(plan))) {
      sent.remove(plan);
      held.put(plan, entered);
    }
    wrong.accept(trouble);
  }

  /** Whether all that was ever filled in is in the ledger. */
  boolean isAllKept() {
    return underWay == 0 && held.isEmpty();
  }
}
