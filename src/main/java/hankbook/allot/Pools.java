package hankbook.allot;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Chooses skeins where it is settled what each lot serves for. Skeins that serve for the same and are alike opened or not form a pool, of
 * which the longest are as good as any; so only the number taken from each pool is to be found.
 */
final class Pools {
  private final Task task;
  private final Yields yields;
  private final Aim aim;
  private final Effort effort;
  private final long[] wanted;
  private final List<Slot> must = new ArrayList<>();
  private final List<Pool> pools;

  Pools(Task task, Yields yields, Aim aim, Effort effort, List<Lot> lots, List<Long> roles) {
    this.task = task;
    this.yields = yields;
    this.aim = aim;
    this.effort = effort;
    wanted = yields.wanted(aim.uncovered());
    Map<Long, List<Lot>> byRole = new LinkedHashMap<>();
    for (int i = 0; i < lots.size(); i++) {
      long role = roles.get(i);
      lots.get(i).must().forEach(skein -> must.add(new Slot(skein, role, 0)));
      if (role != 0) {
        byRole.computeIfAbsent(role, none -> new ArrayList<>()).add(lots.get(i));
      }
    }
    pools = pools(byRole);
    effort.spend(pools.stream().mapToInt(Pool::size).sum() / 4);
  }

  private List<Pool> pools(Map<Long, List<Lot>> byRole) {
    List<Pool> all = new ArrayList<>();
    byRole.forEach((role, those) -> all.add(Pool.of(yields, role, those.stream().flatMap(lot -> lot.unopened().stream()).toList())));
    byRole.forEach((role, those) -> all.add(Pool.of(yields, role, those.stream().flatMap(lot -> lot.opened().stream()).toList())));
    return all.stream().filter(pool -> pool.size() > 0).toList();
  }

  /** Some skeins that meet the aim. */
  Optional<List<Slot>> find() {
    long broken = must.stream().filter(slot -> !slot.skein().opened()).count();
    long unopened = Math.min(aim.unopened() - broken, size(false));
    long opened = Math.min(aim.touched() - must.size() - Math.max(0, unopened), size(true));
    if (unopened < 0 || opened < 0) {
      return Optional.empty();
    }
    long[] given = new long[yields.count()];
    must.forEach(slot -> Yields.add(given, yields.of(slot.skein(), slot.role())));
    return from(0, (int) unopened, (int) opened, given, must);
  }

  private long size(boolean opened) {
    return pools.stream().filter(pool -> pool.opened() == opened).mapToLong(Pool::size).sum();
  }

  /** All that may be taken is taken, since a skein more never harms; the last pool takes what the others left. */
  private Optional<List<Slot>> from(int index, int unopened, int opened, long[] given, List<Slot> taken) {
    if (!effort.spend(1 + taken.size() / 50) || !hopeful(index, unopened, opened, given)) {
      return Optional.empty();
    }
    if (index == pools.size()) {
      return kept(taken);
    }
    Pool pool = pools.get(index);
    int left = pool.opened() ? opened : unopened;
    long later = pools.subList(index + 1, pools.size()).stream().filter(other -> other.opened() == pool.opened()).mapToLong(Pool::size).sum();
    for (int count = Math.min(left, pool.size()); count >= Math.max(0, left - later); count--) {
      long[] more = given.clone();
      Yields.add(more, pool.first(count));
      List<Slot> with = new ArrayList<>(taken);
      with.addAll(pool.slots().subList(0, count));
      Optional<List<Slot>> found = from(index + 1, pool.opened() ? unopened : unopened - count, pool.opened() ? opened - count : opened, more, with);
      if (found.isPresent()) {
        return found;
      }
    }
    return Optional.empty();
  }

  private boolean hopeful(int index, int unopened, int opened, long[] given) {
    long[] most = given.clone();
    for (Pool pool : pools.subList(index, pools.size())) {
      Yields.add(most, pool.first(Math.min(pool.size(), pool.opened() ? opened : unopened)));
    }
    return Yields.reaches(most, wanted);
  }

  /** With some skein of the choice keeping the remnant that is asked for. */
  private Optional<List<Slot>> kept(List<Slot> slots) {
    if (aim.remnant() == 0) {
      return packs(slots) ? Optional.of(slots) : Optional.empty();
    }
    for (int i = 0; i < slots.size(); i++) {
      if (slots.get(i).free() > aim.remnant()) {
        List<Slot> keeping = new ArrayList<>(slots);
        keeping.set(i, slots.get(i).keeping(aim.remnant()));
        if (packs(keeping)) {
          return Optional.of(keeping);
        }
      }
    }
    return Optional.empty();
  }

  private boolean packs(List<Slot> slots) {
    return new Packing(task, yields, slots, effort).covers(aim.uncovered());
  }
}
