package hankbook.studio;

import hankbook.ledger.ChainedEntry;
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
import java.util.OptionalLong;
import java.util.Set;
import java.util.UUID;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/** The life of a plan as the ledger tells it: every step, those to come too. */
public final class PlanSteps {
  private final String plan;
  private final List<Entry> standing;
  private final Map<UUID, Long> numbers;

  private PlanSteps(String plan, List<ChainedEntry> entries) {
    this.plan = plan;
    this.standing = standing(entries.stream().map(ChainedEntry::entry).toList());
    this.numbers = entries.stream().collect(Collectors.toMap(entry -> entry.entry().id(), ChainedEntry::number));
  }

  /** What is known of a plan beside its entries: its cloth's end. */
  record Ending(boolean isCutOff, Optional<LocalDate> cutOff, boolean isSquared, Optional<LocalDate> squared, List<UUID> entries) {
    static final Ending NONE = new Ending(false, Optional.empty(), false, Optional.empty(), List.of());
  }

  /**
   * The steps of a plan.
   *
   * @param begun when it was kept first
   * @param entries all that move its yarn, first to last, reversals among them
   */
  static List<PlanStep> of(String plan, Optional<LocalDate> begun, List<ChainedEntry> entries, Ending ending) {
    PlanSteps steps = new PlanSteps(plan, entries);
    boolean cutOff = ending.isSquared() || (ending.isCutOff() && !steps.moved(Stage.ON_LOOM, EntryKind.DRAW, Place.Kind.LOOM, true).amount().isZero());
    return stated(List.of(
        new PlanStep(Stage.PLANNED, State.DONE, begun, Length.ZERO, 0, OptionalLong.empty()),
        steps.moved(Stage.RESERVED, EntryKind.RESERVE, Place.Kind.RESERVED, true),
        steps.moved(Stage.ON_LOOM, EntryKind.DRAW, Place.Kind.LOOM, !cutOff),
        cutOff ? steps.cutOff(ending) : notYet(Stage.CUT_OFF),
        ending.isSquared() ? steps.squared(ending) : notYet(Stage.SQUARED)));
  }

  private static PlanStep notYet(Stage stage) {
    return new PlanStep(stage, State.LATER, Optional.empty(), Length.ZERO, 0, OptionalLong.empty());
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

  /**
   * What came to a place.
   *
   * @param less whether what went back from it to the shelf does not count
   */
  private PlanStep moved(Stage stage, EntryKind kind, Place.Kind to, boolean less) {
    Map<String, Length> held = new HashMap<>();
    for (Transfer transfer : transfers()) {
      if (isOurs(transfer.to(), to)) {
        held.merge(transfer.skein(), transfer.length(), Length::plus);
      } else if (less && isOurs(transfer.from(), to) && transfer.to().kind() == Place.Kind.SHELF) {
        held.merge(transfer.skein(), transfer.length().negated(), Length::plus);
      }
    }
    held.values().removeIf(length -> !length.isPositive());
    Optional<Entry> last = held.isEmpty() ? Optional.empty() : standing.stream().filter(entry -> entry.kind() == kind).reduce((_, later) -> later);
    return last.map(entry -> done(stage, Optional.of(entry.date()), held, Optional.of(entry.id()))).orElseGet(() -> notYet(stage));
  }

  private List<Transfer> transfers() {
    return standing.stream().flatMap(entry -> entry.transfers().stream()).toList();
  }

  private boolean isOurs(Place place, Place.Kind kind) {
    return place.kind() == kind && place.planName().equals(plan);
  }

  /** The entry of a cut-off is the last that brought yarn back from the loom. */
  private PlanStep cutOff(Ending ending) {
    Optional<UUID> last = standing.stream().filter(entry -> entry.transfers().stream().anyMatch(this::isBack)).map(Entry::id).reduce((_, later) -> later);
    return done(Stage.CUT_OFF, ending.cutOff().or(ending::squared), sums(this::isBack), last);
  }

  private PlanStep squared(Ending ending) {
    return done(Stage.SQUARED, ending.squared(), sums(transfer -> isOurs(transfer.to(), Place.Kind.CLOTH)), ending.entries().stream().reduce((_, later) -> later));
  }

  private boolean isBack(Transfer transfer) {
    return isOurs(transfer.from(), Place.Kind.LOOM) && transfer.to().kind() == Place.Kind.SHELF;
  }

  private Map<String, Length> sums(Predicate<Transfer> which) {
    Map<String, Length> sums = new HashMap<>();
    transfers().stream().filter(which).forEach(transfer -> sums.merge(transfer.skein(), transfer.length(), Length::plus));
    return sums;
  }

  private PlanStep done(Stage stage, Optional<LocalDate> date, Map<String, Length> skeins, Optional<UUID> entry) {
    Length all = skeins.values().stream().reduce(Length.ZERO, Length::plus);
    OptionalLong number = entry.filter(numbers::containsKey).map(id -> OptionalLong.of(numbers.getOrDefault(id, 0L))).orElseGet(OptionalLong::empty);
    return new PlanStep(stage, State.DONE, date, all, skeins.size(), number);
  }

  /** The last that was come to is where the plan is; what follows it is next. */
  private static List<PlanStep> stated(List<PlanStep> all) {
    int now = IntStream.range(0, all.size()).filter(at -> all.get(at).state() == State.DONE).max().orElseThrow();
    List<PlanStep> stated = new ArrayList<>();
    for (int at = 0; at < all.size(); at++) {
      PlanStep step = all.get(at);
      boolean leftOut = at < now && step.state() != State.DONE;
      stated.add(step.as(leftOut ? State.LEFT_OUT : at < now ? State.DONE : at == now ? State.NOW : at == now + 1 ? State.NEXT : State.LATER));
    }
    return List.copyOf(stated);
  }
}
