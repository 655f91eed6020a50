package hankbook.desktop;

import hankbook.measure.Length;
import hankbook.studio.ShelfSkein;
import java.util.List;
import java.util.Map;
import java.util.function.Function;

/**
 * How far a plan has come: what is set aside for it and what is on the loom.
 *
 * @param reserved metres set aside
 * @param onLoom metres on the loom
 * @param skeins of which something is set aside or on the loom
 */
record PlanLife(Length reserved, Length onLoom, long skeins) {
  static final PlanLife PLANNED = new PlanLife(Length.ZERO, Length.ZERO, 0);

  static PlanLife of(String plan, List<ShelfSkein> skeins) {
    return new PlanLife(
        sum(plan, skeins, ShelfSkein::reserved),
        sum(plan, skeins, ShelfSkein::onLoom),
        skeins.stream().filter(skein -> holds(skein.reserved(), plan) || holds(skein.onLoom(), plan)).count());
  }

  private static Length sum(String plan, List<ShelfSkein> skeins, Function<ShelfSkein, Map<String, Length>> where) {
    return skeins.stream().map(skein -> where.apply(skein).getOrDefault(plan, Length.ZERO)).reduce(Length.ZERO, Length::plus);
  }

  private static boolean holds(Map<String, Length> where, String plan) {
    return where.getOrDefault(plan, Length.ZERO).isPositive();
  }

  String words() {
    if (onLoom.isPositive()) {
      return "on the loom";
    }
    return reserved.isPositive() ? "reserved" : "planned";
  }
}
