package hankbook.plan;

import hankbook.measure.Phrase;
import hankbook.measure.Unreadable;
import java.util.ArrayList;
import java.util.List;
import org.apache.commons.numbers.fraction.BigFraction;

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
      throw new Unreadable(named + " repair ends in the order", Phrase.of("at most the {0} of the allowances", allowed));
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

  /** The plan with so many repair ends in all: those that the order names first, and fewer of them where it names more. */
  static Plan instead(Plan plan, int repairs) {
    Warp warp = plan.warp();
    int named = warp.order().stream().mapToInt(OrderEntry::repairEnds).reduce(0, Math::addExact);
    List<OrderEntry> order = repairs < named ? fewer(warp.order(), named, repairs) : warp.order();
    return plan.withWarp(warp.withOrder(order, warp.succession())).withAllowances(allowing(plan.allowances(), repairs));
  }

  private static List<OrderEntry> fewer(List<OrderEntry> order, int named, int repairs) {
    List<Long> left = Apportionment.of(repairs, order.stream().map(entry -> BigFraction.of(entry.repairEnds(), named)).toList(), "the repair ends");
    List<OrderEntry> fewer = new ArrayList<>();
    for (int i = 0; i < order.size(); i++) {
      OrderEntry entry = order.get(i);
      fewer.add(new OrderEntry(entry.yarn(), entry.mark(), entry.amount(), entry.strands(), entry.oneLot(), Math.toIntExact(left.get(i))));
    }
    return fewer;
  }

  private static Allowances allowing(Allowances old, int repairs) {
    return new Allowances(
        old.warpTakeUp(), old.weftTakeUp(), old.drawIn(), old.lengthShrinkage(), old.widthShrinkage(), old.sampling(), old.loomWaste(), old.gap(), old.winding(),
        repairs, old.roundUpTo());
  }
}
