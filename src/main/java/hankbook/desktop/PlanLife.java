package hankbook.desktop;

import hankbook.desktop.say.Say;
import hankbook.measure.Length;
import hankbook.studio.ShelfSkein;
import java.util.List;
import java.util.Map;
import java.util.function.Function;

/**
 * How far a plan has come.
 *
 * @param reserved what is set aside for it
 * @param onLoom what is on its loom
 * @param isSquared whether its book is squared after its cloth was cut off
 */
record PlanLife(Held reserved, Held onLoom, boolean isSquared) {
  static final PlanLife PLANNED = new PlanLife(Held.NOTHING, Held.NOTHING, false);

  /**
   * Yarn at one place.
   *
   * @param length metres of it
   * @param skeins of how many skeins
   */
  record Held(Length length, long skeins) {
    private static final Held NOTHING = new Held(Length.ZERO, 0);

    static Held of(List<Length> lengths) {
      return new Held(lengths.stream().reduce(Length.ZERO, Length::plus), lengths.stream().filter(Length::isPositive).count());
    }

    boolean isAny() {
      return length.isPositive();
    }

    String words() {
      return Say.count(skeins, "{1} of {0} skein", "{1} of {0} skeins", Wording.yarn(length));
    }
  }

  static PlanLife of(String plan, List<ShelfSkein> skeins) {
    return new PlanLife(held(plan, skeins, ShelfSkein::reserved), held(plan, skeins, ShelfSkein::onLoom), false);
  }

  /** The same, its book being squared or not. */
  PlanLife squared(boolean is) {
    return new PlanLife(reserved, onLoom, is);
  }

  private static Held held(String plan, List<ShelfSkein> skeins, Function<ShelfSkein, Map<String, Length>> where) {
    return Held.of(skeins.stream().map(skein -> where.apply(skein).getOrDefault(plan, Length.ZERO)).toList());
  }

  /** Whether nothing more becomes of it: its book is squared, and no yarn was taken for it again. */
  boolean isOver() {
    return isSquared && !reserved.isAny() && !onLoom.isAny();
  }

  /** Where its yarn is; empty where it has none. */
  String sentence() {
    String done = isSquared ? Say.text("Its cloth is cut off and its book squared.") : "";
    String set = reserved.isAny() ? Say.text("Reserved: {0}.", reserved.words()) : done;
    return onLoom.isAny() ? (set + " " + Say.text("On the loom: {0}.", onLoom.words())).strip() : set;
  }

  /** In a word. */
  String word() {
    if (onLoom.isAny()) {
      return Say.text("on the loom");
    }
    return reserved.isAny() ? Say.text("reserved") : isSquared ? Say.text("squared") : Say.text("planned");
  }
}
