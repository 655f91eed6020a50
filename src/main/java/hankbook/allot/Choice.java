package hankbook.allot;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * Some skeins that meet an aim.
 *
 * @param task what is wanted
 * @param yields the most that skeins can give
 * @param shelf all skeins there are
 * @param effort that may still be spent
 * @param aim what they meet
 * @param slots those chosen
 */
record Choice(Task task, Yields yields, DyeLots shelf, Effort effort, Aim aim, List<Slot> slots) {
  /** Another choice that meets an aim and touches certain skeins. */
  Optional<Choice> found(Aim other, Set<Candidate> must) {
    return effort.spent() ? Optional.empty() : search(other, must).find().map(those -> new Choice(task, yields, shelf, effort, other, those));
  }

  /** False where it is plain without looking that no choice meets an aim. */
  boolean hopeful(Aim other) {
    return search(other, Set.of()).hopeful();
  }

  private Search search(Aim other, Set<Candidate> must) {
    return new Search(task, yields, other, shelf, must, effort);
  }

  /** Lengthens the remnant of what was chosen as far as it goes, then looks for a choice that keeps more, until there is none. */
  Choice withLongestRemnant() {
    Choice best = stretched();
    Optional<Choice> more = best.found(best.aim.remnantAtLeast(best.aim.remnant() + 1), Set.of());
    while (more.isPresent()) {
      best = more.get().stretched();
      more = best.found(best.aim.remnantAtLeast(best.aim.remnant() + 1), Set.of());
    }
    return best;
  }

  private Choice stretched() {
    Choice best = this;
    for (int i = 0; i < slots.size(); i++) {
      if (slots.get(i).free() > best.aim.remnant() && keeps(i, best.aim.remnant() + 1)) {
        best = stretched(i, best.aim.remnant() + 1);
      }
    }
    return best;
  }

  /** With the longest remnant that a skein can keep, known to be at least so long. By halving: what keeps a remnant keeps every shorter one. */
  private Choice stretched(int index, long least) {
    long kept = least;
    long lost = slots.get(index).free() + 1;
    while (lost - kept > 1) {
      long middle = kept + (lost - kept) / 2;
      if (keeps(index, middle)) {
        kept = middle;
      } else {
        lost = middle;
      }
    }
    return new Choice(task, yields, shelf, effort, aim.remnantAtLeast(kept), keeping(index, kept));
  }

  private boolean keeps(int index, long length) {
    return new Packing(task, yields, keeping(index, length), effort).covers(aim.uncovered());
  }

  private List<Slot> keeping(int index, long length) {
    List<Slot> keeping = new ArrayList<>(slots.stream().map(slot -> slot.keeping(0)).toList());
    keeping.set(index, slots.get(index).keeping(length));
    return keeping;
  }

  /**
   * Takes each skein, earliest first, if the aim can be reached with it and those taken before it. Where it cannot, a shorter skein that is
   * no other kind could not be taken either.
   */
  Choice earliest() {
    Choice best = this;
    Set<Candidate> taken = new HashSet<>();
    Map<String, Long> refused = new HashMap<>();
    for (Candidate skein : shelf.skeins()) {
      String kind = (skein.opened() ? "opened, " : "unopened, ") + (shelf.alone().contains(skein) ? "alone" : skein.lotOrOwn());
      long length = skein.free().tenthsOfMillimetre();
      if (taken.size() < slots.size() && length > refused.getOrDefault(kind, 0L)) {
        taken.add(skein);
        Optional<Choice> with = best.touches(skein) ? Optional.of(best) : best.found(aim, taken);
        if (with.isEmpty()) {
          taken.remove(skein);
          refused.put(kind, length);
        }
        best = with.orElse(best);
      }
    }
    return best;
  }

  boolean touches(Candidate skein) {
    return slots.stream().anyMatch(slot -> slot.skein().code().equals(skein.code()));
  }

  /** What each skein gives. What was found to be possible is set out with an effort of its own, however much the search for it took. */
  List<Portion> portions(Effort toSetOut) {
    return new Packing(task, yields, slots, toSetOut).portions(aim.uncovered());
  }
}
