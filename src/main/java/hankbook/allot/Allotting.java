package hankbook.allot;

import hankbook.measure.Unreadable;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.IntFunction;

/**
 * Finds the skeins that serve a demand, best first by: least left uncovered; fewest dye lots, counted apart in warp and weft; fewest unopened
 * skeins broken into; fewest skeins touched; longest single remnant left in a touched skein; earliest received. Among choices that leave no
 * more uncovered, those are looked at first whose ends can be wound as many together as the demand asks; the others only where there is none.
 *
 * <p>The result is the best there is, not an approximation: each criterion in turn is settled by an exact {@link Search}, then held while the
 * next is settled. Where a search is given up for its size, the allotment says that it is not proven. Where choices are equal by all of
 * these, which of them is returned is fixed but not otherwise meant.
 */
public final class Allotting {
  /** Earliest received first, unknown last, then by code. */
  static final Comparator<Candidate> EARLIEST =
      Comparator.comparing((Candidate skein) -> skein.received().equals(LocalDate.MIN) ? LocalDate.MAX : skein.received())
          .thenComparing(Candidate::code);

  private static final long STEPS = 400_000;
  /** Where metres lack nothing is spared, and which lot would serve for what is worth a look only where that is quick. */
  private static final long STEPS_WHERE_SHORT = 100_000;

  private final Task task;
  private final Yields yields;
  private final DyeLots shelf;
  private final Effort effort;
  /** The best choice so far, should the search be given up. */
  private Optional<Choice> reached = Optional.empty();

  private Allotting(Task task, DyeLots shelf, Effort effort) {
    this.task = task;
    this.yields = new Yields(task);
    this.shelf = shelf;
    this.effort = effort;
  }

  /**
   * The best allotment.
   *
   * @throws Unreadable if two skeins have the same code
   */
  public static Allotment best(List<Candidate> skeins, Demand demand) {
    return best(skeins, demand, effort());
  }

  /** What may be spent on one yarn: on its choice and the reasons for it, or on whether it is covered. */
  static Effort effort() {
    return new Effort(STEPS);
  }

  static Allotment best(List<Candidate> skeins, Demand demand, Effort effort) {
    Set<String> codes = new HashSet<>();
    for (Candidate skein : skeins) {
      if (!codes.add(skein.code())) {
        throw new Unreadable(skein.code(), "each skein once");
      }
    }
    Task plain = Task.of(demand);
    DyeLots shelf = DyeLots.of(skeins);
    Allotting any = new Allotting(plain, shelf, effort);
    Shortage shortage = any.shortage();
    if (demand.threads() > 1) {
      Allotting wound = new Allotting(Task.woundTogether(demand), shelf, effort);
      Shortage woundShortage = wound.shortage();
      if (woundShortage.uncovered() == shortage.uncovered()) {
        return wound.best(woundShortage, plain);
      }
    }
    return any.best(shortage, plain);
  }

  /** Whether these skeins serve all of the demand: what the best allotment's completeness would be, without choosing it. */
  static boolean covers(List<Candidate> skeins, Demand demand) {
    return covers(skeins, demand, effort());
  }

  static boolean covers(List<Candidate> skeins, Demand demand, Effort effort) {
    return new Allotting(Task.of(demand), DyeLots.of(skeins), effort).shortage().uncovered() == 0;
  }

  private Shortage shortage() {
    return new Shortage(task, yields, shelf, effort);
  }

  private Allotment best(Shortage shortage, Task plain) {
    if (shortage.uncovered() == task.warp() + task.weft()) {
      return new Sharing(task, effort.proven()).nothing();
    }
    boolean metresLack = shelf.free() < task.warp() + task.weft();
    if (metresLack) {
      effort.atMost(STEPS_WHERE_SHORT);
    }
    Choice start = new Choice(task, yields, shelf, effort, Aim.uncoveredAtMost(shortage.uncovered()), shortage.slots());
    Choice choice = settled(start.aim()).orElseGet(() -> metresLack ? reached.orElse(start) : new Thrift(reached.orElse(start)).choice());
    Effort toSetOut = effort();
    List<Portion> portions = choice.portions(toSetOut);
    Sharing sharing = new Sharing(task, effort.proven() && toSetOut.proven());
    return sharing.of(portions, metresLack ? Reasons::whereShort : new Reasons(choice, plain)::of);
  }

  private Optional<Choice> settled(Aim covering) {
    return least(covering::lotsAtMost, 2 * shelf.size())
        .flatMap(lots -> least(lots.aim()::unopenedAtMost, shelf.size()))
        .flatMap(unopened -> least(unopened.aim()::touchedAtMost, shelf.size()))
        .map(Choice::withLongestRemnant)
        .map(Choice::earliest);
  }

  /**
   * A choice for the least count for which there is one. Looked for upwards from where it is not plainly impossible, since a tight limit makes
   * a quick search and a loose one a slow one.
   */
  private Optional<Choice> least(IntFunction<Aim> aims, int most) {
    Choice none = new Choice(task, yields, shelf, effort, aims.apply(0), List.of());
    for (int count = firstHopeful(none, aims, most); count <= most && !effort.spent(); count++) {
      Optional<Choice> found = none.found(aims.apply(count), Set.of());
      if (found.isPresent()) {
        reached = found;
        return found;
      }
    }
    return Optional.empty();
  }

  /** By halving: where a count is plainly too few, so is every lesser one. */
  private static int firstHopeful(Choice none, IntFunction<Aim> aims, int most) {
    int tooFew = -1;
    int hopeful = most;
    while (hopeful - tooFew > 1) {
      int middle = (tooFew + hopeful) >>> 1;
      if (none.hopeful(aims.apply(middle))) {
        hopeful = middle;
      } else {
        tooFew = middle;
      }
    }
    return hopeful;
  }
}
