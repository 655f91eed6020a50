package hankbook.allot;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * For each number of ends of each kind that some skeins can give, the most they can give for the weft beside them. The numbers of ends are
 * the places of a table with one axis to a kind; the kind of which most are wanted lies along the rows.
 */
final class Frontier {
  private static final long IMPOSSIBLE = -1;

  private final Task task;
  private final int[] kinds;
  private final int[] sizes;
  private final long[] weft;

  private Frontier(Task task, int[] kinds, int[] sizes) {
    this.task = task;
    this.kinds = kinds;
    this.sizes = sizes;
    weft = new long[Math.toIntExact(IntStream.of(sizes).asLongStream().reduce(1, Math::multiplyExact))];
    Arrays.fill(weft, IMPOSSIBLE);
  }

  /** No skeins: no ends, no weft. At most so many ends of each kind are ever looked at. */
  static Frontier start(Task task, long[] mostEnds) {
    int[] kinds = kinds(task);
    Frontier start = new Frontier(task, kinds, sizes(task, mostEnds));
    start.weft[0] = 0;
    return start;
  }

  private static int[] kinds(Task task) {
    return IntStream.range(0, task.kinds()).boxed().sorted((one, other) -> task.ends(other) - task.ends(one)).mapToInt(Integer::intValue).toArray();
  }

  private static int[] sizes(Task task, long[] mostEnds) {
    return IntStream.of(kinds(task)).map(kind -> (int) Math.min(task.ends(kind), mostEnds[kind]) + 1).toArray();
  }

  /** How many places the table would have. */
  static double places(Task task, long[] mostEnds) {
    return IntStream.of(sizes(task, mostEnds)).asDoubleStream().reduce(1, (one, other) -> one * other);
  }

  /** How many rows are slid along, at most, for each row of the table when a skein is added. */
  static double uses(Task task, Slot slot) {
    int[] kinds = kinds(task);
    return IntStream.range(1, kinds.length).mapToDouble(axis -> (slot.role() >> kinds[axis] & 1) == 0 ? 1 : 1 + task.endsFrom(kinds[axis], slot.usable())).reduce(2, (one, other) -> one * other);
  }

  /** The frontier with one more skein. */
  Frontier with(Slot slot) {
    Frontier next = new Frontier(task, kinds, sizes);
    raise(next, slot, new int[kinds.length], kinds.length - 1, 0);
    return next;
  }

  /** For every number of ends of the other kinds from the skein, slides along the rows with what is left of it. */
  private void raise(Frontier next, Slot slot, int[] ends, int axis, long taken) {
    if (axis <= 0) {
      long usable = slot.usable() - taken;
      int most = kinds.length == 0 ? 0 : most(slot, 0, usable);
      int weaving = task.servesWeft(slot.role()) ? spared(slot, taken) : -1;
      if (weaving >= 0) {
        slide(next, ends, Math.min(most, weaving), usable, kinds.length == 0 ? 0 : task.each(kinds[0]));
      }
      slide(next, ends, most, 0, 0);
      return;
    }
    int most = most(slot, axis, slot.usable() - taken);
    for (int count = 0; count <= most; count++) {
      ends[axis] = count;
      raise(next, slot, ends, axis - 1, taken + count * task.each(kinds[axis]));
    }
    ends[axis] = 0;
  }

  private int most(Slot slot, int axis, long length) {
    return (slot.role() >> kinds[axis] & 1) == 0 ? 0 : Math.min(sizes[axis] - 1, task.endsFrom(kinds[axis], length));
  }

  /** How many ends along the rows still leave something useful for the weft; -1 where even none do. */
  private int spared(Slot slot, long taken) {
    long spare = slot.free() - taken - task.usefulRemnant() - 1;
    if (spare < 0) {
      return -1;
    }
    return kinds.length == 0 ? 0 : task.endsFrom(kinds[0], spare);
  }

  private void slide(Frontier next, int[] ends, int most, long base, long each) {
    int row = sizes.length == 0 ? 1 : sizes[0];
    for (int start = 0; start < weft.length; start += row) {
      int from = start - offset(start, ends);
      if (from <= start) {
        slide(next, start, from, row, most, base, each);
      }
    }
  }

  /** How far back the row lies to which so many ends are added; negative where it would lie outside. */
  private int offset(int start, int[] ends) {
    int offset = 0;
    int stride = 1;
    for (int axis = 0; axis < sizes.length; axis++) {
      if (axis > 0 && start / stride % sizes[axis] < ends[axis]) {
        return -1;
      }
      offset += axis == 0 ? 0 : ends[axis] * stride;
      stride *= sizes[axis];
    }
    return offset;
  }

  /**
   * For each number of ends along a row the best split between what was there and the skein. The splits form a window that slides along; its
   * best is kept in a queue of falling worth, so the work does not grow with the ends a skein holds.
   */
  private void slide(Frontier next, int to, int from, int row, int most, long base, long each) {
    int[] queue = new int[row];
    int head = 0;
    int tail = 0;
    for (int ends = 0; ends < row; ends++) {
      if (weft[from + ends] != IMPOSSIBLE) {
        while (tail > head && weft[from + queue[tail - 1]] + queue[tail - 1] * each <= weft[from + ends] + ends * each) {
          tail--;
        }
        queue[tail++] = ends;
      }
      if (tail > head && queue[head] < ends - most) {
        head++;
      }
      if (tail > head) {
        next.weft[to + ends] = Math.max(next.weft[to + ends], weft[from + queue[head]] + base - (ends - queue[head]) * each);
      }
    }
  }

  /** The place where least is left uncovered, the one with the most warp of equals: a warp short of weft can be woven shorter. */
  int best() {
    int best = 0;
    for (int place = 0; place < weft.length; place++) {
      if (weft[place] != IMPOSSIBLE) {
        int order = Long.compare(uncovered(place), uncovered(best));
        best = order < 0 || (order == 0 && warp(place) >= warp(best)) ? place : best;
      }
    }
    return best;
  }

  long uncovered(int place) {
    return task.warp() - warp(place) + Math.max(0, task.weft() - weft[place]);
  }

  private long warp(int place) {
    return IntStream.range(0, kinds.length).mapToLong(axis -> ends(place, axis) * task.each(kinds[axis])).sum();
  }

  private int ends(int place, int axis) {
    int rest = place;
    for (int i = 0; i < axis; i++) {
      rest /= sizes[i];
    }
    return rest % sizes[axis];
  }

  /** What a skein gave of what stands at a place after it. */
  Portion into(int place, Slot slot, Frontier after) {
    return into(place, slot, after, new int[task.kinds()], kinds.length - 1, 0).orElseThrow(() -> new IllegalStateException("no use of " + slot + " leads there, wanted one"));
  }

  private Optional<Portion> into(int place, Slot slot, Frontier after, int[] ends, int axis, long taken) {
    if (axis < 0) {
      long rest = slot.usable() - taken;
      boolean weaves = task.servesWeft(slot.role()) && slot.free() - taken > task.usefulRemnant();
      int from = before(place, ends);
      long given = weft[from] == IMPOSSIBLE ? IMPOSSIBLE : after.weft[place] - weft[from];
      boolean fits = given == 0 || (weaves && given == rest);
      return fits && given >= 0 ? Optional.of(new Portion(slot, list(ends), given)) : Optional.empty();
    }
    int most = Math.min(ends(place, axis), most(slot, axis, slot.usable() - taken));
    for (int count = most; count >= 0; count--) {
      ends[kinds[axis]] = count;
      Optional<Portion> found = into(place, slot, after, ends, axis - 1, taken + count * task.each(kinds[axis]));
      if (found.isPresent()) {
        return found;
      }
    }
    ends[kinds[axis]] = 0;
    return Optional.empty();
  }

  /** The place before these ends, by kind, were added. */
  int before(int place, int[] ends) {
    int from = place;
    int stride = 1;
    for (int axis = 0; axis < kinds.length; axis++) {
      from -= ends[kinds[axis]] * stride;
      stride *= sizes[axis];
    }
    return from;
  }

  private static List<Integer> list(int[] ends) {
    return IntStream.of(ends).boxed().toList();
  }
}
