package hankbook.allot;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;

/**
 * Looks for a choice of skeins that meets an aim: settles lot by lot what it serves for, turns back where the yields of what is left
 * cannot reach what is wanted, and then chooses the skeins ({@link Pools}). Finds a choice wherever there is one.
 */
final class Search {
  private final Task task;
  private final Yields yields;
  private final Aim aim;
  private final Effort effort;
  private final List<Lot> lots;
  private final List<List<Integer>> dominators = new ArrayList<>();
  private final Outlook outlook;
  private final List<Long> roles = new ArrayList<>();

  /** Over the skeins of a shelf, of which some must be touched. */
  Search(Task task, Yields yields, Aim aim, DyeLots shelf, Set<Candidate> must, Effort effort) {
    this.task = task;
    this.yields = yields;
    this.aim = aim;
    this.effort = effort;
    lots = Lot.of(shelf, must, aim);
    outlook = new Outlook(task, yields, shelf, aim, lots);
    for (int i = 0; i < lots.size(); i++) {
      Lot lot = lots.get(i);
      dominators.add(IntStream.range(0, i).filter(before -> lots.get(before).dominates(lot)).boxed().toList());
    }
    effort.spend(lots.stream().mapToInt(Lot::size).sum());
  }

  Optional<List<Slot>> find() {
    return from(aim.lots(), task.oneLotBits(), new long[outlook.bounds()], 0);
  }

  /** False where it is plain without looking that there is no such choice. */
  boolean hopeful() {
    return outlook.hopeful(0, aim.lots(), new long[outlook.bounds()], 0);
  }

  private Optional<List<Slot>> from(int lotsLeft, long unserved, long[] given, int used) {
    int index = roles.size();
    if (!effort.spend(1) || !outlook.hopeful(index, lotsLeft, given, used)) {
      return Optional.empty();
    }
    if (index == lots.size() || (lotsLeft == 0 && lots.get(index).must().isEmpty())) {
      return new Pools(task, yields, aim, effort, lots.subList(0, index), roles).find();
    }
    for (long role : choices(index, lotsLeft, unserved)) {
      long[] more = given.clone();
      Yields.add(more, outlook.most(index, role));
      roles.add(role);
      Optional<List<Slot>> found = from(lotsLeft - task.lots(role), unserved & ~role, more, role == 0 ? used : used + 1);
      roles.removeLast();
      if (found.isPresent()) {
        return found;
      }
    }
    return Optional.empty();
  }

  /** What a lot may serve for, besides what is left by the lots before. */
  private List<Long> choices(int index, int lotsLeft, long unserved) {
    Lot lot = lots.get(index);
    List<Long> choices = new ArrayList<>();
    // A lot that another could stand in for is not used while that other lies idle.
    boolean usable = dominators.get(index).stream().noneMatch(before -> roles.get(before) == 0);
    if (usable) {
      boolean weft = task.weft() > 0 && (unserved & task.weftBit()) == (task.oneLotBits() & task.weftBit());
      warps(unserved).forEach(warp -> choices.add(warp));
      if (weft) {
        choices.add(task.weftBit());
        warps(unserved).forEach(warp -> choices.add(warp | task.weftBit()));
      }
    }
    choices.removeIf(role -> task.lots(role) > lotsLeft || tooMuch(index, role));
    if (lot.must().isEmpty()) {
      choices.add(0L);
    }
    return choices;
  }

  /** Every set of kinds that must keep to one lot and have none yet, beside the kinds that need not. */
  private List<Long> warps(long unserved) {
    long free = task.warpBits(false);
    long open = unserved & task.warpBits(true);
    List<Long> warps = new ArrayList<>();
    for (long some = open; some > 0; some = (some - 1) & open) {
      warps.add(some | free);
    }
    if (free != 0) {
      warps.add(free);
    }
    return warps;
  }

  /** Of two lots alike, the one that comes first serves for no less. */
  private boolean tooMuch(int index, long role) {
    Lot lot = lots.get(index);
    return dominators.get(index).stream().anyMatch(before -> lots.get(before).must().isEmpty() && lot.dominates(lots.get(before)) && role > roles.get(before));
  }
}
