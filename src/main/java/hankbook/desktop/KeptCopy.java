package hankbook.desktop;

import hankbook.exchange.PlanDraft;
import hankbook.exchange.PlanField;
import hankbook.exchange.PlanPart;
import hankbook.studio.KeptPlan;
import hankbook.studio.NotDone;
import java.util.Optional;

/**
 * What the ledger has of a plan, as far as this window has seen. It is changed only by errands, which run one after the other, so that each
 * builds upon what the one before has kept.
 */
final class KeptCopy {
  private static final PlanField NAME = PlanField.of(PlanPart.PLAN, "name");

  private volatile String name;
  private volatile PlanDraft draft;
  private volatile int version;

  private KeptCopy(String name, PlanDraft draft, int version) {
    this.name = name;
    this.draft = draft.with(NAME, name);
    this.version = version;
  }

  /** A plan as it is kept now. */
  static KeptCopy of(PlanDesk desk, String name) {
    return desk.kept(name).map(KeptCopy::of).orElseGet(() -> new KeptCopy(name, PlanDraft.BLANK, 0));
  }

  private static KeptCopy of(KeptPlan kept) {
    return new KeptCopy(kept.name(), PlanDraft.of(kept.text()), kept.version());
  }

  String name() {
    return name;
  }

  PlanDraft draft() {
    return draft;
  }

  int version() {
    return version;
  }

  /** A newer copy, where someone else kept one since. */
  Optional<KeptCopy> newer(PlanDesk desk) {
    return desk.kept(name).filter(kept -> kept.version() != version).map(KeptCopy::of);
  }

  /** Keeps what was entered, unless someone else changed the plan meanwhile; gives the version that has it. */
  int keep(PlanDesk desk, PlanDraft entered) throws NotDone {
    PlanDraft named = entered.with(NAME, name);
    if (!named.equals(draft)) {
      version = kept(desk, named);
      draft = named;
    }
    return version;
  }

  /** An earlier attempt whose answer was lost may have kept just this. */
  private int kept(PlanDesk desk, PlanDraft named) throws NotDone {
    try {
      return desk.keep(name, named.json(), version);
    } catch (NotDone refused) {
      return desk.kept(name).filter(now -> PlanDraft.of(now.text()).equals(named)).orElseThrow(() -> refused).version();
    }
  }

  /** Keeps what was entered in the place of whatever is kept now. */
  int keepInstead(PlanDesk desk, PlanDraft entered) throws NotDone {
    KeptCopy newest = of(desk, name);
    draft = newest.draft;
    version = newest.version;
    return keep(desk, entered);
  }

  /** Gives the plan another name, with what was entered in it. */
  void rename(PlanDesk desk, String to, PlanDraft entered) throws NotDone {
    keep(desk, entered);
    if (to.equals(name)) {
      return;
    }
    PlanDraft named = draft.with(NAME, to);
    desk.rename(name, to, named.json());
    name = to;
    draft = named;
    version = desk.kept(to).map(KeptPlan::version).orElse(0);
  }
}
