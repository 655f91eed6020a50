package hankbook.desktop;

import hankbook.exchange.BadInput;
import hankbook.exchange.PlanDraft;
import hankbook.studio.NotDone;
import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.function.Supplier;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;

/** What can be done with the open plan's yarn, what hinders it, and what came of it. */
public final class PlanActs {
  private final PlanDesk desk;
  private final Work work;
  private final Runnable changed;
  private final Supplier<String> open;
  private final ReadOnlyObjectWrapper<Map<PlanAct, String>> hindrances = new ReadOnlyObjectWrapper<>(Map.of());
  private final ReadOnlyObjectWrapper<PlanSaid> said = new ReadOnlyObjectWrapper<>(PlanSaid.NOTHING);
  private final ReadOnlyObjectWrapper<PlanLife> life = new ReadOnlyObjectWrapper<>(PlanLife.PLANNED);
  private volatile Optional<Unsure> unsure = Optional.empty();
  private boolean acting;

  /** One thing tried with one version of a plan. */
  private record Attempt(PlanAct act, String plan, int version) {}

  /** What may have been done without an answer; the same id goes with every repetition, so that the ledger takes it once. */
  private record Unsure(Attempt attempt, UUID id) {}

  /**
   * @param changed is run after yarn was moved
   * @param open the name of the plan that is open
   */
  PlanActs(PlanDesk desk, Work work, Runnable changed, Supplier<String> open) {
    this.desk = desk;
    this.work = work;
    this.changed = changed;
    this.open = open;
  }

  /** Why each act cannot be done now; empty for those that can. */
  ReadOnlyObjectProperty<Map<PlanAct, String>> hindrancesProperty() {
    return hindrances.getReadOnlyProperty();
  }

  /** What came of the last act. */
  ReadOnlyObjectProperty<PlanSaid> saidProperty() {
    return said.getReadOnlyProperty();
  }

  /** Where the plan's yarn is. */
  ReadOnlyObjectProperty<PlanLife> lifeProperty() {
    return life.getReadOnlyProperty();
  }

  /** Judges anew what can be done. */
  void judge(PlanAnswer answer, PlanLife now) {
    Map<PlanAct, String> found = new EnumMap<>(PlanAct.class);
    for (PlanAct act : PlanAct.values()) {
      found.put(act, act.hindrance(answer, now));
    }
    life.set(now);
    hindrances.set(found);
  }

  /** Lets nothing be done for now. */
  void hinder(String why) {
    Map<PlanAct, String> found = new EnumMap<>(PlanAct.class);
    for (PlanAct act : PlanAct.values()) {
      found.put(act, why);
    }
    hindrances.set(found);
  }

  void say(PlanSaid words) {
    said.set(words);
  }

  /** Does an act for a plan as it was entered, unless one is under way or something hinders it. */
  void act(PlanAct act, KeptCopy copy, PlanDraft entered) {
    if (acting || !hindrances.get().getOrDefault(act, "").isEmpty()) {
      return;
    }
    acting = true;
    work.run(() -> run(act, copy, entered), words -> ended(copy.name(), words, false), trouble -> ended(copy.name(), PlanWords.trouble(trouble), true));
  }

  /** Yarn is reserved for what was entered or not at all, so keeping that comes first. */
  private String run(PlanAct act, KeptCopy copy, PlanDraft entered) throws BadInput, NotDone {
    int version = act.reserves() ? copy.keep(desk, entered) : copy.version();
    run(new Attempt(act, copy.name(), version));
    return act.done(PlanLife.of(copy.name(), desk.skeins()));
  }

  private void run(Attempt attempt) throws BadInput, NotDone {
    UUID id = unsure.filter(tried -> tried.attempt.equals(attempt)).map(Unsure::id).orElseGet(UUID::randomUUID);
    unsure = Optional.of(new Unsure(attempt, id));
    try {
      attempt.act.run(desk, id, attempt.plan, attempt.version);
      unsure = Optional.empty();
    } catch (BadInput | NotDone refused) {
      unsure = Optional.empty();
      throw refused;
    }
  }

  /** Where another plan was opened meanwhile, the words must not be taken to be of that one. */
  private void ended(String plan, String words, boolean trouble) {
    acting = false;
    said.set(new PlanSaid(plan.equals(open.get()) || words.startsWith(plan) ? words : plan + ": " + words, trouble));
    changed.run();
  }
}
