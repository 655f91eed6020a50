package hankbook.allot;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.ToLongFunction;
import java.util.stream.IntStream;

/**
 * A quick, good way to use some skeins: what must keep to one lot first, then the longest ends, from skeins that serve for nothing else,
 * then from the others as long as a rest is left that can be woven, then from those that lose least by it. Not always the best way.
 */
final class Filling {
  private final Task task;
  private final List<Slot> slots;
  private final long[] taken;
  private final int[][] ends;
  private long uncovered;

  Filling(Task task, List<Slot> slots) {
    this.task = task;
    this.slots = slots;
    taken = new long[slots.size()];
    ends = new int[slots.size()][task.kinds()];
    IntStream.range(0, task.kinds())
        .boxed()
        .sorted(Comparator.comparing((Integer kind) -> (task.warpBits(true) >> kind & 1) == 0).thenComparingLong(kind -> -task.each(kind)))
        .forEach(this::give);
    uncovered += Math.max(0, task.weft() - IntStream.range(0, slots.size()).mapToLong(this::weft).sum());
  }

  private void give(int kind) {
    List<Integer> those = IntStream.range(0, slots.size()).boxed().filter(i -> (slots.get(i).role() >> kind & 1) == 1).toList();
    int left = task.ends(kind);
    left = give(kind, left, those.stream().filter(i -> !weaves(i)).toList(), i -> slots.get(i).usable());
    left = give(kind, left, those.stream().filter(this::weaves).toList(), i -> Math.min(slots.get(i).usable(), slots.get(i).free() - task.usefulRemnant() - 1));
    if (left > 0) {
      List<Integer> leastLost = new ArrayList<>(those);
      leastLost.sort(Comparator.comparingLong(i -> (slots.get(i).usable() - taken[i]) % task.each(kind)));
      left = give(kind, left, leastLost, i -> slots.get(i).usable());
    }
    uncovered += left * task.each(kind);
  }

  private int give(int kind, int wanted, List<Integer> those, ToLongFunction<Integer> upTo) {
    int left = wanted;
    for (int i : those) {
      long given = ends[i][kind] * task.each(kind);
      int more = Math.min(left, Math.max(0, task.endsFrom(kind, upTo.applyAsLong(i) - taken[i] + given) - ends[i][kind]));
      ends[i][kind] += more;
      taken[i] += more * task.each(kind);
      left -= more;
    }
    return left;
  }

  private boolean weaves(int i) {
    return task.servesWeft(slots.get(i).role()) && slots.get(i).free() - taken[i] > task.usefulRemnant();
  }

  private long weft(int i) {
    return weaves(i) ? slots.get(i).usable() - taken[i] : 0;
  }

  long uncovered() {
    return uncovered;
  }

  List<Portion> portions() {
    return IntStream.range(0, slots.size())
        .mapToObj(i -> new Portion(slots.get(i), IntStream.of(ends[i]).boxed().toList(), weft(i)))
        .toList();
  }
}
