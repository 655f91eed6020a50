package hankbook.allot;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;

/**
 * What a skein is charged for being touched in a {@link Bound}.
 *
 * @param measure which of the {@link Yields}
 * @param unopened for an unopened skein, no less than for an opened one
 * @param opened for an opened skein
 */
record Price(int measure, long unopened, long opened) {
  /** No price, and the prices of the last skein that would be taken if those permitted came from all lots or from as many as may serve. */
  static List<Price> all(Yields yields, DyeLots shelf, Aim aim) {
    List<Price> prices = new ArrayList<>();
    for (int measure = 0; measure < yields.count(); measure++) {
      prices.add(new Price(measure, 0, 0));
      if (aim.unopened() != Aim.ANY) {
        prices.add(of(yields, shelf, aim, measure, 1));
        prices.add(of(yields, shelf, aim, measure, Math.max(1, shelf.lots().size() / (double) Math.max(1, aim.lots()))));
      }
    }
    return prices.stream().distinct().toList();
  }

  private static Price of(Yields yields, DyeLots shelf, Aim aim, int measure, double times) {
    long openedCount = (long) aim.touched() - aim.unopened();
    long opened = aim.touched() == Aim.ANY ? 0 : last(yields, shelf.lots().stream().flatMap(lot -> lot.opened().stream()), measure, openedCount * times);
    long unopened = last(yields, shelf.lots().stream().flatMap(lot -> lot.unopened().stream()), measure, aim.unopened() * times);
    return new Price(measure, Math.max(opened, unopened), opened);
  }

  private static long last(Yields yields, Stream<Candidate> skeins, int measure, double rank) {
    return skeins.map(skein -> yields.most(skein)[measure]).sorted(Comparator.reverseOrder()).skip((long) Math.max(0, rank)).findFirst().orElse(0L);
  }
}
