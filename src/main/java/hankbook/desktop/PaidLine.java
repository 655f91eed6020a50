package hankbook.desktop;

import hankbook.cost.PaidFor;
import hankbook.ledger.Place;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.joda.money.Money;

/**
 * A line of what became of what was paid.
 *
 * @param words where it is
 * @param amount how much
 * @param sum whether it sums the lines below it, which are its parts
 */
record PaidLine(String words, Money amount, boolean sum) {
  private static final List<Map.Entry<Place.Kind, String>> USED =
      List.of(Map.entry(Place.Kind.CLOTH, "cloth"), Map.entry(Place.Kind.THRUMS, "thrums"), Map.entry(Place.Kind.SAMPLE, "samples"));
  private static final List<Map.Entry<Place.Kind, String>> LOST =
      List.of(Map.entry(Place.Kind.AWAY, "parted with"), Map.entry(Place.Kind.RECOUNT, "not found in recounts"), Map.entry(Place.Kind.REWOUND, "wound off, onto nothing"));

  /** What was paid by where it is now; the sums add up to it, and so do the parts. */
  static List<PaidLine> of(PaidFor paid) {
    List<PaidLine> lines = new ArrayList<>();
    add(lines, "In the house", house(paid));
    add(lines, "On order", List.of(new PaidLine("not come yet", paid.onOrder(), false)));
    add(lines, "In what was woven", woven(paid));
    add(lines, "Gone", LOST.stream().map(loss -> new PaidLine(loss.getValue(), paid.lost().getOrDefault(loss.getKey(), none(paid)), false)).toList());
    return lines;
  }

  private static List<PaidLine> house(PaidFor paid) {
    List<PaidLine> parts = new ArrayList<>(List.of(new PaidLine("on the shelf", paid.shelf(), false)));
    paid.plans().forEach((plan, places) -> {
      parts.add(new PaidLine("set aside for " + plan, places.getOrDefault(Place.Kind.RESERVED, none(paid)), false));
      parts.add(new PaidLine("on the loom for " + plan, places.getOrDefault(Place.Kind.LOOM, none(paid)), false));
    });
    return parts;
  }

  private static List<PaidLine> woven(PaidFor paid) {
    List<PaidLine> parts = new ArrayList<>();
    paid.plans().forEach((plan, places) ->
        USED.forEach(use -> parts.add(new PaidLine(plan + ", " + use.getValue(), places.getOrDefault(use.getKey(), none(paid)), false))));
    return parts;
  }

  private static void add(List<PaidLine> lines, String words, List<PaidLine> parts) {
    List<PaidLine> there = parts.stream().filter(part -> !part.amount().isZero()).toList();
    if (!there.isEmpty()) {
      lines.add(new PaidLine(words, Money.total(there.stream().map(PaidLine::amount).toList()), true));
      lines.addAll(there);
    }
  }

  private static Money none(PaidFor paid) {
    return Money.zero(paid.paid().getCurrencyUnit());
  }
}
