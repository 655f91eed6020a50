package hankbook.desktop;

import hankbook.exchange.BadInput;
import hankbook.studio.NotDone;
import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;

/** What can be done with the open plan's yarn, what hinders it, and what came of it. */
public final class PlanActs {
  private final PlanDesk desk;
  private final Work work;
  private final Runnable changed;
  private final ReadOnlyObjectWrapper<Map<PlanAct, String>> hindrances = new ReadOnlyObjectWrapper<>(Map.of());
  private final ReadOnlyObjectWrapper<PlanSaid> said = new ReadOnlyObjectWrapper<>(PlanSaid.NOTHING);
  private final ReadOnlyObjectWrapper<PlanLife> life = new ReadOnlyObjectWrapper<>(PlanLife.PLANNED);
  private Optional<Attempt> unsure = Optional.empty();
  private boolean acting;

  /** One thing tried; the same id goes with every repetition, so that the ledger takes it once. */
  private record Attempt(PlanAct act, String plan, UUID id) {}

  PlanActs(PlanDesk desk, Work work, Runnable changed) {
    this.desk = desk;
    this.work = work;
    this.changed = changed;
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

  void say(PlanSaid words) {
    said.set(words);
  }

  /** Does an act for a plan, unless one is under way or something hinders it. */
  void act(PlanAct act, String plan) {
    if (acting || !hindrances.get().getOrDefault(act, "").isEmpty()) {
      return;
    }
    acting = true;
    Attempt attempt = unsure.filter(tried -> tried.act == act && tried.plan.equals(plan)).orElseGet(() -> new Attempt(act, plan, UUID.randomUUID()));
    unsure = Optional.of(attempt);
    work.run(() -> run(attempt), words -> ended(new PlanSaid(words, false)), this::failed);
  }

  private String run(Attempt attempt) throws BadInput, NotDone {
    attempt.act.run(desk, attempt.id, attempt.plan);
    return attempt.act.done(PlanLife.of(attempt.plan, desk.skeins()));
  }

  private void failed(Exception trouble) {
    Optional<Attempt> tried = unsure;
    ended(new PlanSaid(PlanWords.trouble(trouble), true));
    if (!(trouble instanceof NotDone || trouble instanceof BadInput)) {
      unsure = tried;
    }
  }

  private void ended(PlanSaid words) {
    acting = false;
    unsure = Optional.empty();
    said.set(words);
    changed.run();
  }
}
