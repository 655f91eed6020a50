package hankbook.studio;

import hankbook.ledger.Entry;
import hankbook.ledger.EntryKind;
import hankbook.ledger.Place;
import hankbook.ledger.Transfer;
import hankbook.measure.Length;
import hankbook.studio.PlanStep.Stage;
import hankbook.studio.PlanStep.State;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;

/** The life of a plan as the ledger tells it: every step, those to come too. */
public final class PlanSteps {
  private final String plan;
  private final List<Entry> standing;

  private PlanSteps(String plan, List<Entry> entries) {
    this.plan = plan;
    this.standing = standing(entries);
  }

  /** What is known of a plan beside its entries: its cloth's end. */
  record Ending(boolean isCutOff, Optional<LocalDate> cutOff, boolean isSquared, Optional<LocalDate> squared, List<UUID> entries) {
    static final Ending NONE = new Ending(false, Optional.empty(), false, Optional.empty(), List.of());
  }

  /**
   * The steps of a plan.
   *
   * @param entries all that move its yarn, first to last, reversals among them
   */
  static List<PlanStep> of(String plan, List<Entry> entries, Ending ending) {
    PlanSteps steps = new PlanSteps(plan, entries);
    PlanStep reserved = steps.moved(Stage.RESERVED, EntryKind.RESERVE, Place.Kind.RESERVED, Place.Kind.SHELF);
    PlanStep onLoom = steps.moved(Stage.ON_LOOM, EntryKind.DRAW, Place.Kind.LOOM, Place.Kind.SHELF);
    List<PlanStep> all = List.of(
        new PlanStep(Stage.PLANNED, State.DONE, Optional.empty(), Length.ZERO, 0, Optional.empty()), reserved, onLoom, steps.cutOff(ending), steps.squared(ending));
    return stated(all);
  }

  /** Entries that hold: not taken back, or brought back after that; reversals themselves are not among them. */
  private static List<Entry> standing(List<Entry> entries) {
    Set<UUID> undone = new HashSet<>();
    for (Entry entry : entries.reversed()) {
      if (!undone.contains(entry.id())) {
        entry.reverses().ifPresent(undone::add);
      }
    }
    return entries.stream().filter(entry -> entry.kind() != EntryKind.REVERSAL && !undone.contains(entry.id())).toList();
  }

  /** What came to a place and did not go back to another. */
  private PlanStep moved(Stage stage, EntryKind kind, Place.Kind to, Place.Kind back) {
    Map<String, Length> held = new HashMap<>();
    for (Entry entry : standing) {
      for (Transfer transfer : entry.transfers()) {
        if (isOurs(transfer.to(), to)) {
          held.merge(transfer.skein(), transfer.length(), Length::plus);
        } else if (isOurs(transfer.from(), to) && transfer.to().kind() == back && entry.kind() != EntryKind.RETURN) {
          held.merge(transfer.skein(), transfer.length().negated(), Length::plus);
        }
      }
    }
    held.values().removeIf(length -> !length.isPositive());
    Optional<Entry> last = held.isEmpty() ? Optional.empty() : standing.stream().filter(entry -> entry.kind() == kind).reduce((_, later) -> later);
    return step(stage, last.isPresent(), last.map(Entry::date), held, last.map(Entry::id));
  }

  private boolean isOurs(Place place, Place.Kind kind) {
    return place.kind() == kind && place.planName().equals(plan);
  }

  private PlanStep cutOff(Ending ending) {
    Map<String, Length> returned = new HashMap<>();
    Optional<Entry> last = Optional.empty();
    for (Entry entry : standing) {
      for (Transfer transfer : entry.transfers()) {
        if (isOurs(transfer.from(), Place.Kind.LOOM) && transfer.to().kind() == Place.Kind.SHELF) {
          returned.merge(transfer.skein(), transfer.length(), Length::plus);
          last = Optional.of(entry);
        }
      }
    }
    boolean done = ending.isCutOff() || ending.isSquared();
    return step(Stage.CUT_OFF, done, done ? ending.cutOff().or(() -> ending.squared()) : Optional.empty(), done ? returned : Map.of(), done ? last.map(Entry::id) : Optional.empty());
  }

  private PlanStep squared(Ending ending) {
    Map<String, Length> woven = new HashMap<>();
    standing.stream().flatMap(entry -> entry.transfers().stream()).filter(transfer -> isOurs(transfer.to(), Place.Kind.CLOTH)).forEach(
        transfer -> woven.merge(transfer.skein(), transfer.length(), Length::plus));
    boolean done = ending.isSquared();
    return step(Stage.SQUARED, done, done ? ending.squared() : Optional.empty(), done ? woven : Map.of(), done ? ending.entries().stream().reduce((_, later) -> later) : Optional.empty());
  }

  private static PlanStep step(Stage stage, boolean done, Optional<LocalDate> date, Map<String, Length> skeins, Optional<UUID> entry) {
    Length all = skeins.values().stream().reduce(Length.ZERO, Length::plus);
    return new PlanStep(stage, done ? State.DONE : State.LATER, date, all, skeins.size(), entry);
  }

  /** The last that was come to is where the plan is; what follows it is next. */
  private static List<PlanStep> stated(List<PlanStep> all) {
    int now = all.stream().filter(step -> step.state() == State.DONE).map(step -> step.stage().ordinal()).reduce(Math::max).orElseThrow();
    List<PlanStep> stated = new ArrayList<>();
    for (PlanStep step : all) {
      int at = step.stage().ordinal();
      boolean leftOut = at < now && step.state() != State.DONE;
      stated.add(step.as(leftOut ? State.LEFT_OUT : at < now ? State.DONE : at == now ? State.NOW : at == now + 1 ? State.NEXT : State.LATER));
    }
    return List.copyOf(stated);
  }
}
