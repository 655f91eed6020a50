package hankbook.allot;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * A bound on what lots can give: the sum of a measure over their skeins, or, where only so many unopened or opened skeins may be touched, the
 * same with a price on each skein and the prices of those that may be touched added once. At any prices that is no less than the best that the
 * permitted number of skeins can give (Lagrangian relaxation), and at well-chosen ones hardly more.
 *
 * @param measure which of the {@link Measures}
 * @param unopenedPrice on each unopened skein, no less than that on an opened one
 * @param openedPrice on each opened skein
 * @param wanted what must be reached, less the prices of the skeins that may be touched
 */
record Bound(int measure, long unopenedPrice, long openedPrice, long wanted) {
  static List<Bound> all(Task task, Measures measures, Aim aim, List<Lot> lots) {
    List<Bound> bounds = new ArrayList<>();
    long[] wanted = measures.wanted(aim.uncovered());
    for (int measure = 0; measure < measures.count(); measure++) {
      bounds.add(new Bound(measure, 0, 0, wanted[measure]));
      if (aim.unopened() != Aim.ANY && wanted[measure] > 0) {
        bounds.add(priced(task, measures, aim, lots, measure, 1));
        bounds.add(priced(task, measures, aim, lots, measure, Math.max(1, lots.size() / (double) Math.max(1, aim.lots()))));
      }
    }
    return bounds;
  }

  /** At the price of the last skein that would be taken if so many times the permitted number were, longest first. */
  private static Bound priced(Task task, Measures measures, Aim aim, List<Lot> lots, int measure, double times) {
    long unopened = aim.unopened() - lots.stream().flatMap(lot -> lot.must().stream()).filter(skein -> !skein.opened()).count();
    long opened = aim.touched() == Aim.ANY ? Aim.ANY : aim.touched() - aim.unopened() - lots.stream().flatMap(lot -> lot.must().stream()).filter(Candidate::opened).count();
    long openedPrice = opened == Aim.ANY ? 0 : price(lots.stream().flatMap(lot -> lot.opened().stream()).map(skein -> measures.of(skein, task.everything())[measure]).toList(), opened * times);
    long unopenedPrice = price(lots.stream().flatMap(lot -> lot.unopened().stream()).map(skein -> measures.of(skein, task.everything())[measure]).toList(), unopened * times);
    long dearer = Math.max(openedPrice, unopenedPrice);
    long allowed = dearer * unopened + (openedPrice == 0 ? 0 : openedPrice * opened);
    return new Bound(measure, dearer, openedPrice, measures.wanted(aim.uncovered())[measure] - allowed);
  }

  private static long price(List<Long> given, double rank) {
    return rank >= given.size() ? 0 : given.stream().sorted(Comparator.reverseOrder()).skip((long) Math.max(0, rank)).findFirst().orElse(0L);
  }

  long of(Lot lot, long role, Measures measures) {
    return role == 0 ? 0 : sum(lot.must(), role, measures, 0) + sum(lot.opened(), role, measures, openedPrice) + sum(lot.unopened(), role, measures, unopenedPrice);
  }

  private long sum(List<Candidate> skeins, long role, Measures measures, long price) {
    long sum = 0;
    for (Candidate skein : skeins) {
      sum += Math.max(0, measures.of(skein, role)[measure] - price);
    }
    return sum;
  }
}
