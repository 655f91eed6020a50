package hankbook.allot;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/**
 * The least that all skeins together leave uncovered. What need not keep to one lot may come from every lot; for what must, lot after lot is
 * tried, the one that could give most of it first.
 */
final class Shortage {
  private final Task task;
  private final Yields yields;
  private final Effort effort;
  private final Map<String, List<Candidate>> lots = new LinkedHashMap<>();
  private final Map<String, Long> roles = new LinkedHashMap<>();
  private final long floor;
  private List<Slot> slots = List.of();
  private long uncovered = Long.MAX_VALUE;

  Shortage(Task task, Yields yields, DyeLots shelf, Effort effort) {
    this.task = task;
    this.yields = yields;
    this.effort = effort;
    shelf.lots().forEach(lot -> lots.put(lot.name(), Stream.concat(lot.opened().stream(), lot.unopened().stream()).toList()));
    long open = task.everything() & ~task.oneLotBits();
    lots.keySet().forEach(lot -> roles.put(lot, open));
    floor = floor(task.oneLotBits(), 0);
    from(task.oneLotBits(), 0);
  }

  private void from(long unserved, long lacking) {
    if (uncovered <= floor || floor(unserved, lacking) >= uncovered || (slots.size() > 0 && !effort.spend(1))) {
      return;
    }
    if (unserved == 0) {
      keep();
      return;
    }
    long bit = Long.lowestOneBit(unserved);
    List<String> most = lots.keySet().stream().sorted(Comparator.comparingLong((String lot) -> -given(lot, bit))).toList();
    for (String lot : most) {
      roles.merge(lot, bit, (one, other) -> one | other);
      from(unserved & ~bit, lacking + lacking(lot, bit));
      roles.merge(lot, bit, (one, other) -> one & ~other);
    }
  }

  private void keep() {
    List<Slot> all = new ArrayList<>();
    lots.forEach((lot, skeins) -> skeins.forEach(skein -> all.add(new Slot(skein, roles.getOrDefault(lot, 0L), 0))));
    long left = new Packing(task, yields, all, effort).leastUncovered();
    if (left < uncovered) {
      uncovered = left;
      slots = all;
    }
  }

  /** No less can be left where some uses have their lot and the others each get the best. */
  private long floor(long unserved, long lacking) {
    long sum = lacking;
    for (long left = unserved; left != 0; left &= left - 1) {
      long bit = Long.lowestOneBit(left);
      sum += lots.keySet().stream().mapToLong(lot -> lacking(lot, bit)).min().orElse(0);
    }
    return sum;
  }

  private long lacking(String lot, long bit) {
    return bit == task.weftBit() ? Math.max(0, task.weft() - given(lot, bit)) : (task.ends(index(bit)) - given(lot, bit)) * task.each(index(bit));
  }

  private long given(String lot, long bit) {
    long sum = lots.getOrDefault(lot, List.of()).stream().mapToLong(skein -> yields.of(skein, bit)[index(bit)]).sum();
    return bit == task.weftBit() ? sum : Math.min(sum, task.ends(index(bit)));
  }

  private static int index(long bit) {
    return Long.numberOfTrailingZeros(bit);
  }

  long uncovered() {
    return slots.isEmpty() ? task.warp() + task.weft() : uncovered;
  }

  /** All skeins in the roles in which so little is left uncovered. */
  List<Slot> slots() {
    return slots;
  }
}
