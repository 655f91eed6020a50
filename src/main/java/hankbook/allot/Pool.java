package hankbook.allot;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * Skeins that serve for the same and are alike opened or not.
 *
 * @param slots the skeins, longest first
 * @param opened whether they were opened before
 * @param sums what the first of them give together, measure by measure, for every number from none to all
 */
record Pool(List<Slot> slots, boolean opened, List<long[]> sums) {
  static Pool of(Yields yields, long role, List<Candidate> skeins) {
    List<Slot> slots = skeins.stream().sorted(Comparator.comparing(Candidate::free).reversed().thenComparing(Allotting.EARLIEST)).map(skein -> new Slot(skein, role, 0)).toList();
    List<long[]> sums = new ArrayList<>(List.of(new long[yields.count()]));
    for (Slot slot : slots) {
      long[] sum = sums.getLast().clone();
      Yields.add(sum, yields.of(slot.skein(), role));
      sums.add(sum);
    }
    return new Pool(slots, !skeins.isEmpty() && skeins.get(0).opened(), sums);
  }

  int size() {
    return slots.size();
  }

  long[] first(int count) {
    return sums.get(count);
  }
}
