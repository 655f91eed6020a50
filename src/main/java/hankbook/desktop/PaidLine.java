package hankbook.desktop;

import hankbook.cost.PaidFor;
import hankbook.desktop.say.Say;
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
  private static final List<Place.Kind> USED = List.of(Place.Kind.CLOTH, Place.Kind.THRUMS, Place.Kind.SAMPLE);
  private static final List<Place.Kind> LOST = List.of(Place.Kind.AWAY, Place.Kind.RECOUNT, Place.Kind.REWOUND);

  /** What was paid by where it is now; the sums add up to it, and so do the parts. */
  static List<PaidLine> of(PaidFor paid) {
    List<PaidLine> lines = new ArrayList<>();
    add(lines, Say.text("In the house"), house(paid));
    add(lines, Say.text("On order"), List.of(new PaidLine(Say.text("not come yet"), paid.onOrder(), false)));
    add(lines, Say.text("In what was woven"), woven(paid));
    add(lines, Say.text("Gone"), LOST.stream().map(loss -> new PaidLine(went(loss), paid.lost().getOrDefault(loss, none(paid)), false)).toList());
    return lines;
  }

  private static List<PaidLine> house(PaidFor paid) {
    List<PaidLine> parts = new ArrayList<>(List.of(new PaidLine(Say.text("on the shelf"), paid.shelf(), false)));
    paid.plans().forEach((plan, places) -> {
      parts.add(new PaidLine(Say.text("set aside for {0}", plan), places.getOrDefault(Place.Kind.RESERVED, none(paid)), false));
      parts.add(new PaidLine(Say.text("on the loom for {0}", plan), places.getOrDefault(Place.Kind.LOOM, none(paid)), false));
    });
    return parts;
  }

  private static List<PaidLine> woven(PaidFor paid) {
    List<PaidLine> parts = new ArrayList<>();
    paid.plans().forEach((plan, places) ->
        USED.forEach(use -> parts.add(new PaidLine(plan + ", " + went(use), places.getOrDefault(use, none(paid)), false))));
    return parts;
  }

  private static String went(Place.Kind place) {
    return switch (place) {
      case CLOTH -> Say.text("cloth");
      case THRUMS -> Say.text("thrums");
      case SAMPLE -> Say.text("samples");
      case AWAY -> Say.text("parted with");
      case RECOUNT -> Say.text("not found in recounts");
      case REWOUND -> Say.text("wound off, onto nothing");
      case MAKER, ORDERED, SHELF, RESERVED, LOOM -> throw new IllegalArgumentException("yarn is not gone that is at " + place);
    };
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
