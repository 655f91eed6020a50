package hankbook.allot;

import hankbook.measure.Length;
import hankbook.measure.Unreadable;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.LongPredicate;

/**
 * Finds the skeins that serve a demand, best first by: least left uncovered; fewest dye lots, counted per use; fewest unopened skeins broken
 * into; fewest skeins touched; longest single remnant left in a touched skein; earliest received.
 *
 * <p>The result is the best there is, not an approximation: each criterion in turn is settled by an exact dynamic programme ({@link Sweep}),
 * then held while the next is settled. The work grows with the skeins, the ends and the counts of lots and skeins, not with the number of
 * possible choices. Where choices are equal by all of these, which of them is returned is fixed but not otherwise meant.
 */
public final class Allotting {
  /** Earliest received first, unknown last, then by code. */
  static final Comparator<Candidate> EARLIEST =
      Comparator.comparing((Candidate skein) -> skein.received().equals(LocalDate.MIN) ? LocalDate.MAX : skein.received())
          .thenComparing(Candidate::code);

  private final Task task;
  private final List<Candidate> skeins;

  private Allotting(Task task, List<Candidate> skeins) {
    this.task = task;
    this.skeins = skeins;
  }

  /**
   * The best allotment.
   *
   * @throws Unreadable if two skeins have the same code
   */
  public static Allotment best(List<Candidate> skeins, Demand demand) {
    Set<String> codes = new HashSet<>();
    for (Candidate skein : skeins) {
      if (!codes.add(skein.code())) {
        throw new Unreadable(skein.code(), "each skein once");
      }
    }
    Task task = Task.of(demand);
    return new Allotting(task, worthTrying(task, skeins.stream().sorted(EARLIEST).toList())).best();
  }

  /** Whether these skeins serve all of the demand: what the best allotment's completeness would be, without choosing it. */
  static boolean covers(List<Candidate> skeins, Demand demand) {
    return new Sweep(Task.of(demand), Aim.NONE, skeins, Set.of()).leastUncovered() == 0;
  }

  /**
   * Of skeins alike but for their age, the earliest, as many as could hold all ends and all weft apart. A choice of more is never the best:
   * what they give could be gathered into fewer of them, from no more lots.
   */
  private static List<Candidate> worthTrying(Task task, List<Candidate> earliestFirst) {
    Map<Kind, Long> seen = new HashMap<>();
    return earliestFirst.stream()
        .filter(skein -> seen.merge(new Kind(skein.lot(), skein.opened(), skein.free()), 1L, Long::sum) <= task.enough(skein.free().tenthsOfMillimetre()))
        .toList();
  }

  private record Kind(String lot, boolean opened, Length free) {}

  private Allotment best() {
    Aim aim = fewest(Aim.NONE.uncoveredAtMost(sweep(Aim.NONE).leastUncovered()));
    if (aim.touched() == 0) {
      return new Allotment(List.of(), task.ends(), new Length(task.weft()));
    }
    Aim keeping = longestRemnant(aim);
    List<Candidate> chosen = earliest(keeping);
    return new Sharing(task, keeping, new Sweep(task, keeping, chosen, Set.copyOf(chosen)).portions()).allotment();
  }

  private Aim fewest(Aim covering) {
    Aim inLots = covering.lotsAtMost(least(count -> reaches(covering.lotsAtMost(count))));
    Aim unopened = inLots.unopenedAtMost(least(count -> reaches(inLots.unopenedAtMost(count))));
    return unopened.touchedAtMost(least(count -> reaches(unopened.touchedAtMost(count))));
  }

  /** The least count from 0 that will do. Tried upwards, since a tight limit makes a quick search and a loose one a slow one. */
  private static long least(LongPredicate does) {
    long count = 0;
    while (!does.test(count)) {
      count++;
    }
    return count;
  }

  /** By halving: a choice that keeps one remnant keeps every shorter one. */
  private Aim longestRemnant(Aim aim) {
    long kept = 0;
    long lost = 1 + skeins.stream().mapToLong(skein -> skein.free().tenthsOfMillimetre()).max().orElse(0);
    while (lost - kept > 1) {
      long middle = kept + (lost - kept) / 2;
      if (reaches(aim.remnantAtLeast(middle))) {
        kept = middle;
      } else {
        lost = middle;
      }
    }
    return aim.remnantAtLeast(kept);
  }

  /** Takes each skein, earliest first, if the aim can be reached with it and those taken before it; leaves it for good if not. */
  private List<Candidate> earliest(Aim aim) {
    List<Candidate> open = new ArrayList<>(skeins);
    Set<Candidate> taken = new HashSet<>();
    for (Candidate skein : skeins) {
      if (taken.size() < aim.touched()) {
        taken.add(skein);
        if (!new Sweep(task, aim, open, taken).reaches()) {
          taken.remove(skein);
          open.remove(skein);
        }
      }
    }
    return skeins.stream().filter(taken::contains).toList();
  }

  private boolean reaches(Aim aim) {
    return sweep(aim).reaches();
  }

  private Sweep sweep(Aim aim) {
    return new Sweep(task, aim, skeins, Set.of());
  }
}
