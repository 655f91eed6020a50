package hankbook.plan;

import hankbook.measure.Unreadable;
import hankbook.plan.OrderEntry.Ends;
import hankbook.plan.OrderEntry.Share;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.apache.commons.numbers.fraction.BigFraction;
import org.jspecify.annotations.Nullable;

/** Counts out the ends of a warp over the groups of its order, so that every end is accounted for. */
public final class WarpOrder {
  private WarpOrder() {}

  /**
   * The ends of each group, in the order's order.
   *
   * @throws Unreadable if the groups do not account for every end; it names the difference
   */
  public static List<Long> ends(List<OrderEntry> order, int total) {
    long counted = order.stream().mapToLong(entry -> entry.amount() instanceof Ends ends ? ends.ends() : 0).sum();
    List<BigFraction> shares = order.stream().map(WarpOrder::share).filter(Objects::nonNull).toList();
    long left = total - counted;
    if (left < 0 || (left > 0 && shares.isEmpty())) {
      String difference = Math.abs(left) + (left < 0 ? " too many" : " too few");
      throw new Unreadable(counted + " ends in the order", total + " ends, as the warp has: " + difference);
    }
    List<Long> shared = shares.isEmpty() ? List.of() : Apportionment.of(left, shares, "the warp's order");
    List<Long> ends = new ArrayList<>();
    int next = 0;
    for (OrderEntry entry : order) {
      ends.add(entry.amount() instanceof Ends given ? (long) given.ends() : shared.get(next++));
    }
    return ends;
  }

  private static @Nullable BigFraction share(OrderEntry entry) {
    return entry.amount() instanceof Share share ? share.part() : null;
  }
}
