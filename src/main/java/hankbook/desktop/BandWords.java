package hankbook.desktop;

import hankbook.desktop.say.Say;
import hankbook.plan.Band;
import hankbook.plan.Plan;
import hankbook.plan.Warp;
import hankbook.yarn.YarnColour;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;

/** The threads of a cloth in words and numbers. */
final class BandWords {
  private static final int MOST_STRIPES = 20;

  private BandWords() {}

  /** The warp's order from left to right. */
  static String warp(Plan plan, Band band) {
    Warp warp = plan.warp();
    String order = warp.succession().map(written -> OrderReading.bounded(written.words())).orElseGet(() -> stripes(band));
    if (warp.succession().isEmpty() || warp.selvedge().isEmpty()) {
      return order + ".";
    }
    return Say.text("{0}. Selvedges at both sides: {1} ends of {2}.", order, warp.selvedgeEnds(), warp.selvedge().get().yarn());
  }

  /** The order of picks from the first. */
  static String weft(Plan plan, Band band) {
    return plan.weftSuccession().map(written -> Say.text("{0}, over and over.", OrderReading.bounded(written.words()))).orElseGet(() -> stripes(band) + ".");
  }

  private static String stripes(Band band) {
    List<Band.Stripe> stripes = band.stripes(MOST_STRIPES);
    boolean all = stripes.stream().mapToLong(Band.Stripe::count).sum() == band.count();
    String first = String.join(", ", stripes.stream().map(stripe -> stripe.count() + " " + stripe.thread().yarn()).toList());
    return all ? first : Say.text("{0} and so on", first);
  }

  /** How many threads there are of each yarn, those first that come first. */
  static Map<YarnColour, Long> counts(Band band) {
    Map<YarnColour, Long> counts = new LinkedHashMap<>();
    band.order().countsOver(band.count()).forEach((mark, count) -> {
      counts.merge(Objects.requireNonNull(band.threads().get(mark)).yarn(), count, Long::sum);
    });
    return counts;
  }
}
