package hankbook.desktop;

import hankbook.allot.Purchase;
import hankbook.cost.Labour;
import hankbook.cost.PieceCost;
import hankbook.cost.Remnant;
import hankbook.ledger.Place;
import hankbook.measure.DurationText;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import org.joda.money.Money;

/** What is said of what a plan costs. */
final class CostWords {
  private static final String AS_SET = "as set";

  private CostWords() {}

  /** What each piece of a kind costs: {@code each towel 12.38 EUR, 2 of them 12.39 EUR}. */
  static String each(PieceCost piece) {
    return "each " + piece.name() + " " + Wording.money(piece.each()) + dearer(piece, ", ");
  }

  /** What is said of those that bear one coin more; empty where none does. */
  static String dearer(PieceCost piece, String before) {
    return piece.dearer() == 0 ? "" : before + piece.dearer() + " of them " + Wording.money(Money.ofMinor(piece.all().getCurrencyUnit(), piece.each().getAmountMinorLong() + 1));
  }

  /** All kinds in a line that begins with a capital; empty where there are none. */
  static String each(List<PieceCost> pieces) {
    String words = pieces.stream().map(CostWords::each).collect(Collectors.joining("; "));
    return words.isEmpty() ? "" : words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1);
  }

  /** What is done, to how much, how long that takes: {@code 556 ends × 30 s = 4 h 38 min (common practice)}. */
  static String work(Labour work) {
    return times(work) + " = " + DurationText.rounded(work.time()) + (work.unit().from().equals(AS_SET) ? "" : " (" + work.unit().from() + ")");
  }

  /** To how much it is done, and how long each takes. */
  static String times(Labour work) {
    String per = work.kind().per().name().toLowerCase(Locale.ROOT) + (work.count() == 1 ? "" : "s");
    return work.count() + " " + per + " × " + DurationText.rounded(work.unit().each());
  }

  /** A kind of work as a heading. */
  static String heading(Labour work) {
    String key = work.kind().key();
    return key.substring(0, 1).toUpperCase(Locale.ROOT) + key.substring(1);
  }

  static String purchase(Purchase purchase) {
    if (purchase.putUps().isEmpty()) {
      return purchase.yarn() + ": nothing shows how it is put up";
    }
    String of = purchase.holds().map(holds -> " of " + Wording.yarn(holds)).orElse("");
    String at = purchase.each().map(each -> " at " + Wording.money(each)).orElse(", at a price that is not known");
    return purchase.putUps().getAsInt() + of + ", " + purchase.yarn() + at;
  }

  /** Where what is left of a yarn is, and whether it is of use. */
  static String remnant(Remnant remnant) {
    String where = remnant.skein().isEmpty() ? "of what is bought" : remnant.skein();
    return where + ", " + Wording.yarn(remnant.left()) + " " + remnant.yarn() + (remnant.useful() ? "" : ", too short to weave from");
  }

  /** Where yarn of a plan is that has left the shelf. */
  static String place(Place.Kind place) {
    return switch (place) {
      case LOOM -> "On the loom";
      case CLOTH -> "In the cloth";
      case THRUMS -> "Thrums";
      case SAMPLE -> "Samples";
      case MAKER, ORDERED, SHELF, RESERVED, AWAY, RECOUNT, REWOUND -> throw new IllegalArgumentException(place + " is nowhere that a plan spends yarn");
    };
  }
}
