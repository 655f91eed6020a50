package hankbook.plan;

import hankbook.measure.Unreadable;
import java.util.ArrayList;
import java.util.List;

/** Charges spare ends for mending: first those the order names, then the rest of the allowance to the group with most ends. */
final class RepairEnds {
  private RepairEnds() {}

  /**
   * The ends of each group with its repair ends.
   *
   * @throws Unreadable if the order names more than a plan allows that allows any
   */
  static List<Long> added(List<Long> ends, List<OrderEntry> order, int allowed) {
    int named = order.stream().mapToInt(OrderEntry::repairEnds).reduce(0, Math::addExact);
    if (allowed > 0 && named > allowed) {
      throw new Unreadable(named + " repair ends in the order", "at most the " + allowed + " of the allowances");
    }
    List<Long> added = new ArrayList<>();
    for (int i = 0; i < order.size(); i++) {
      added.add(ends.get(i) + order.get(i).repairEnds());
    }
    int charged = most(ends);
    added.set(charged, added.get(charged) + Math.max(0, allowed - named));
    return added;
  }

  private static int most(List<Long> ends) {
    int most = 0;
    for (int i = 1; i < ends.size(); i++) {
      most = ends.get(i) > ends.get(most) ? i : most;
    }
    return most;
  }
}
