package hankbook.plan;

import hankbook.measure.Phrase;
import hankbook.measure.Unreadable;
import hankbook.plan.OrderEntry.Ends;
import hankbook.plan.OrderEntry.Share;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.OptionalLong;
import java.util.Set;
import org.apache.commons.numbers.fraction.BigFraction;
import org.jspecify.annotations.Nullable;

/** Counts out the ends of a warp over the groups of its order, so that every end is accounted for. */
public final class WarpOrder {
  private WarpOrder() {}

  /**
   * The ends of each group of the order, in its order; selvedges of a yarn of their own are not among them.
   *
   * @param total all ends, selvedges included
   * @throws Unreadable if the groups do not account for every end; it names the difference
   */
  public static List<Long> ends(Warp warp, int total) {
    int ordered = warp.ordered(total);
    return warp.succession().map(written -> written(written, warp.order(), ordered)).orElseGet(() -> counted(warp.order(), ordered));
  }

  private static List<Long> written(Succession written, List<OrderEntry> order, int ordered) {
    if (written.threads() != ordered) {
      throw new Unreadable(written.threads() + " ends in the order", Reach.wanted(written, ordered));
    }
    Map<String, Long> counts = written.counts();
    return order.stream().map(entry -> counts.getOrDefault(entry.mark(), 0L)).toList();
  }

  private static List<Long> counted(List<OrderEntry> order, int total) {
    long counted = order.stream().mapToLong(entry -> entry.amount() instanceof Ends ends ? ends.ends() : 0).sum();
    List<BigFraction> shares = order.stream().map(WarpOrder::share).filter(Objects::nonNull).toList();
    long left = total - counted;
    if (left < 0 || (left > 0 && shares.isEmpty())) {
      throw new Unreadable(counted + " ends in the order", Reach.wanted(counted, total));
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

  /**
   * All ends that the order makes, selvedges of a yarn of their own among them; empty where a share takes what the counts leave.
   */
  public static OptionalLong made(Warp warp) {
    int selvedges = warp.selvedge().isPresent() ? warp.selvedgeEnds() : 0;
    if (warp.succession().isPresent()) {
      return OptionalLong.of(warp.succession().get().threads() + selvedges);
    }
    boolean counted = warp.order().stream().allMatch(entry -> entry.amount() instanceof Ends);
    return counted ? OptionalLong.of(warp.order().stream().mapToLong(entry -> entry.amount() instanceof Ends ends ? ends.ends() : 0).sum() + selvedges) : OptionalLong.empty();
  }

  /**
   * Checks that each group is in the written order, each mark is that of a group, and ends given beside it are those that it makes.
   *
   * @throws Unreadable naming what is not so
   */
  public static void checkWritten(Succession written, List<OrderEntry> order) {
    Marked.check(written, order);
    Map<String, Long> counts = written.counts();
    Set<String> marks = written.marks();
    for (OrderEntry entry : order) {
      Marked.checkUsed(marks, entry);
      long made = counts.getOrDefault(entry.mark(), 0L);
      if (entry.amount() instanceof Ends given && given.ends() != made) {
        long over = given.ends() - made;
        String difference = Math.abs(over) + (over > 0 ? " too many" : " too few");
        throw new Unreadable(given.ends() + " ends of " + entry.mark(), Phrase.of("{0}, as the written order makes: {1}", made, difference));
      }
    }
  }
}
