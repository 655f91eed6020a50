package hankbook.allot;

import java.util.Arrays;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * For each number of ends of each kind that some skeins can give, the most they can give for the weft beside them. The numbers of ends are
 * the places of a table ({@link Axes}).
 */
final class Frontier {
  private static final long IMPOSSIBLE = -1;

  private final Task task;
  private final Axes axes;
  private final long[] weft;

  private Frontier(Task task, Axes axes) {
    this.task = task;
    this.axes = axes;
    weft = new long[Math.toIntExact((long) axes.places())];
    Arrays.fill(weft, IMPOSSIBLE);
  }

  /** No skeins: no ends, no weft. */
  static Frontier start(Task task, Axes axes) {
    Frontier start = new Frontier(task, axes);
    start.weft[0] = 0;
    return start;
  }

  /** The frontier with one more skein. */
  Frontier with(Slot slot) {
    Frontier next = new Frontier(task, axes);
    raise(next, slot, new int[axes.count()], axes.count() - 1, 0);
    return next;
  }

  /** For every number of ends of the other kinds from the skein, slides along the rows with what is left of it. */
  private void raise(Frontier next, Slot slot, int[] ends, int axis, long taken) {
    if (axis <= 0) {
      long usable = slot.usable() - taken;
      int most = axes.most(slot, 0, usable);
      int weaving = task.servesWeft(slot.role()) ? spared(slot, taken) : -1;
      if (weaving >= 0) {
        slide(next, ends, Math.min(most, weaving), usable, axes.each(0));
      }
      slide(next, ends, most, 0, 0);
      return;
    }
    int most = axes.most(slot, axis, slot.usable() - taken);
    for (int count = 0; count <= most; count++) {
      ends[axis] = count;
      raise(next, slot, ends, axis - 1, taken + count * axes.each(axis));
    }
    ends[axis] = 0;
  }

  /** How many ends along the rows still leave something useful for the weft; -1 where even none do. */
  private int spared(Slot slot, long taken) {
    long spare = slot.free() - taken - task.usefulRemnant() - 1;
    if (spare < 0) {
      return -1;
    }
    return axes.count() == 0 ? 0 : task.endsFrom(axes.kind(0), spare);
  }

  private void slide(Frontier next, int[] ends, int most, long base, long each) {
    for (int start = 0; start < weft.length; start += axes.row()) {
      int from = axes.rowBefore(start, ends);
      if (from <= start) {
        slide(next, start, from, most, base, each);
      }
    }
  }

  /**
   * For each number of ends along a row the best split between what was there and the skein. The splits form a window that slides along; its
   * best is kept in a queue of falling worth, so the work does not grow with the ends a skein holds.
   */
  private void slide(Frontier next, int to, int from, int most, long base, long each) {
    int row = axes.row();
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
        best = order < 0 || (order == 0 && axes.warp(place) >= axes.warp(best)) ? place : best;
      }
    }
    return best;
  }

  long uncovered(int place) {
    return task.warp() - axes.warp(place) + Math.max(0, task.weft() - weft[place]);
  }

  /** What a skein gave of what stands at a place after it. */
  Portion into(int place, Slot slot, Frontier after) {
    return into(place, slot, after, new int[task.kinds()], axes.count() - 1, 0).orElseThrow(() -> new IllegalStateException("no use of " + slot + " leads there, wanted one"));
  }

  private Optional<Portion> into(int place, Slot slot, Frontier after, int[] ends, int axis, long taken) {
    if (axis < 0) {
      long rest = slot.usable() - taken;
      boolean weaves = task.servesWeft(slot.role()) && slot.free() - taken > task.usefulRemnant();
      int from = axes.before(place, ends);
      long given = weft[from] == IMPOSSIBLE ? IMPOSSIBLE : after.weft[place] - weft[from];
      boolean fits = given == 0 || (weaves && given == rest);
      return fits && given >= 0 ? Optional.of(new Portion(slot, IntStream.of(ends).boxed().toList(), given)) : Optional.empty();
    }
    int most = Math.min(axes.ends(place, axis), axes.most(slot, axis, slot.usable() - taken));
    for (int count = most; count >= 0; count--) {
      ends[axes.kind(axis)] = count;
      Optional<Portion> found = into(place, slot, after, ends, axis - 1, taken + count * axes.each(axis));
      if (found.isPresent()) {
        return found;
      }
    }
    ends[axes.kind(axis)] = 0;
    return Optional.empty();
  }
}
