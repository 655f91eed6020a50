package hankbook.allot;

import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;

/**
 * The most that skeins can give, measure by measure: the ends of each kind, the weft, all of the warp, and everything together, lengths in
 * tenths of a millimetre. Each measure alone is an upper bound, so what they deny cannot be; the sum over some skeins bounds what these give.
 */
final class Yields {
  private static final int MOST_LENGTHS = 3;

  private final Task task;
  private final Map<Long, Map<Candidate, long[]>> known = new HashMap<>();

  private final Map<Aim, List<Price>> prices = new HashMap<>();

  Yields(Task task) {
    this.task = task;
  }

  int count() {
    return task.kinds() + 3;
  }

  int weft() {
    return task.kinds();
  }

  int warp() {
    return task.kinds() + 1;
  }

  int all() {
    return task.kinds() + 2;
  }

  /** What must be reached so that no more is left uncovered. */
  long[] wanted(long uncovered) {
    long[] wanted = new long[count()];
    for (int kind = 0; kind < task.kinds(); kind++) {
      wanted[kind] = task.ends(kind) == 0 ? 0 : task.ends(kind) - uncovered / task.each(kind);
    }
    wanted[weft()] = task.weft() - uncovered;
    wanted[warp()] = task.warp() - uncovered;
    wanted[all()] = task.warp() + task.weft() - uncovered;
    return wanted;
  }

  /** Of a whole skein that may serve for everything. */
  long[] most(Candidate skein) {
    return of(skein, task.everything());
  }

  /** The prices to bound an aim's searches with. */
  List<Price> prices(DyeLots shelf, Aim aim) {
    return prices.computeIfAbsent(aim.remnantAtLeast(0), none -> Price.all(this, shelf, aim));
  }

  /** Of a whole skein in a role. Not to be changed by the caller. */
  long[] of(Candidate skein, long role) {
    return known.computeIfAbsent(role, none -> new IdentityHashMap<>()).computeIfAbsent(skein, none -> of(new Slot(skein, role, 0)));
  }

  long[] of(Slot slot) {
    long[] most = new long[count()];
    for (int kind = 0; kind < task.kinds(); kind++) {
      most[kind] = (slot.role() >> kind & 1) == 0 ? 0 : task.endsFrom(kind, slot.usable());
    }
    boolean weaves = task.servesWeft(slot.role()) && slot.free() > task.usefulRemnant();
    most[warp()] = fill(slot.usable(), most);
    most[weft()] = weaves ? slot.usable() : 0;
    most[all()] = weaves ? slot.usable() : most[warp()];
    return most;
  }

  /** The most metres in whole ends that a length gives; merely a bound where the ends are of very many lengths. */
  private long fill(long usable, long[] most) {
    Map<Long, Long> byLength = new HashMap<>();
    for (int kind = 0; kind < task.kinds(); kind++) {
      if (most[kind] > 0) {
        byLength.merge(task.each(kind), most[kind], Long::sum);
      }
    }
    long[] lengths = byLength.keySet().stream().mapToLong(Long::longValue).sorted().toArray();
    if (lengths.length > MOST_LENGTHS) {
      return Math.min(usable, byLength.entrySet().stream().mapToLong(entry -> entry.getKey() * entry.getValue()).sum());
    }
    return fill(usable, lengths, byLength, lengths.length - 1);
  }

  private static long fill(long usable, long[] lengths, Map<Long, Long> most, int last) {
    if (last < 0) {
      return 0;
    }
    long length = lengths[last];
    long ends = Math.min(most.getOrDefault(length, 0L), usable / length);
    if (last == 0) {
      return ends * length;
    }
    long best = 0;
    for (long taken = ends; taken >= 0 && best < usable; taken--) {
      best = Math.max(best, taken * length + fill(usable - taken * length, lengths, most, last - 1));
    }
    return best;
  }

  static void add(long[] to, long[] more) {
    for (int i = 0; i < to.length; i++) {
      to[i] += more[i];
    }
  }

  static boolean reaches(long[] given, long[] wanted) {
    for (int i = 0; i < given.length; i++) {
      if (given[i] < wanted[i]) {
        return false;
      }
    }
    return true;
  }
}
