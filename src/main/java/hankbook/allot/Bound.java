package hankbook.allot;

import java.util.ArrayList;
import java.util.List;

/**
 * A bound on what lots can give: the sum of a measure over their skeins, or, where only so many unopened or opened skeins may be touched, the
 * same with a price on each skein and the prices of those that may be touched added once. At any prices that is no less than the best that the
 * permitted number of skeins can give (Lagrangian relaxation), and at well-chosen ones hardly more.
 *
 * @param price the measure and its prices
 * @param wanted what must be reached, less the prices of the skeins that may be touched
 */
record Bound(Price price, long wanted) {
  static List<Bound> all(Yields yields, DyeLots shelf, Aim aim, List<Lot> lots) {
    long[] wanted = yields.wanted(aim.uncovered());
    long mustUnopened = lots.stream().flatMap(lot -> lot.must().stream()).filter(skein -> !skein.opened()).count();
    long mustOpened = lots.stream().mapToLong(lot -> lot.must().size()).sum() - mustUnopened;
    List<Bound> bounds = new ArrayList<>();
    for (Price price : yields.prices(shelf, aim)) {
      long unopened = price.unopened() == 0 ? 0 : price.unopened() * (aim.unopened() - mustUnopened);
      long opened = price.opened() == 0 ? 0 : price.opened() * ((long) aim.touched() - aim.unopened() - mustOpened);
      bounds.add(new Bound(price, wanted[price.measure()] - unopened - opened));
    }
    return bounds;
  }

  int measure() {
    return price.measure();
  }

  long of(Lot lot, long role, Yields yields) {
    return role == 0 ? 0 : sum(lot.must(), role, yields, 0) + sum(lot.opened(), role, yields, price.opened()) + sum(lot.unopened(), role, yields, price.unopened());
  }

  private long sum(List<Candidate> skeins, long role, Yields yields, long each) {
    long sum = 0;
    for (Candidate skein : skeins) {
      sum += Math.max(0, yields.of(skein, role)[price.measure()] - each);
    }
    return sum;
  }
}
