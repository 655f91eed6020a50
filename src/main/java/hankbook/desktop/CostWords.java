package hankbook.desktop;

import hankbook.allot.Purchase;
import hankbook.cost.Labour;
import hankbook.cost.PieceCost;
import hankbook.cost.Remnant;
import hankbook.cost.UnitTime;
import hankbook.desktop.say.Say;
import hankbook.ledger.Place;
import hankbook.measure.DurationText;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import org.joda.money.Money;

/** What is said of what a plan costs. */
final class CostWords {
  private CostWords() {}

  /** What each piece of a kind costs: {@code each towel 12.38 EUR, 2 of them 12.39 EUR}. */
  private static String each(PieceCost piece) {
    return Say.text("each {0} {1}", piece.name(), Wording.money(piece.each())) + (piece.dearer() == 0 ? "" : ", " + dearer(piece));
  }

  /** What is said of those that bear one coin more; empty where none does. */
  static String dearer(PieceCost piece) {
    Money more = Money.ofMinor(piece.all().getCurrencyUnit(), piece.each().getAmountMinorLong() + 1);
    return piece.dearer() == 0 ? "" : Say.text("{0} of them {1}", piece.dearer(), Wording.money(more));
  }

  /** All kinds in a line that begins with a capital; empty where there are none. */
  static String each(List<PieceCost> pieces) {
    String words = pieces.stream().map(CostWords::each).collect(Collectors.joining("; "));
    return words.isEmpty() ? "" : words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1);
  }

  /** What is done, to how much, how long that takes: {@code 556 ends × 30 s = 4 h 38 min (common practice)}. */
  static String work(Labour work) {
    return times(work) + " = " + DurationText.rounded(work.time()) + (work.unit().from().equals(UnitTime.AS_SET) ? "" : " (" + Wording.phrase(work.unit().from()) + ")");
  }

  /** To how much it is done, and how long each takes. */
  static String times(Labour work) {
    String each = DurationText.rounded(work.unit().each());
    return switch (work.kind().per()) {
      case END -> Say.count(work.count(), "{0} end × {1}", "{0} ends × {1}", each);
      case PICK -> Say.count(work.count(), "{0} pick × {1}", "{0} picks × {1}", each);
      case PIECE -> Say.count(work.count(), "{0} piece × {1}", "{0} pieces × {1}", each);
    };
  }

  /** A kind of work as a heading. */
  static String heading(Labour work) {
    return AfterWords.begin(Say.known(work.kind().key()));
  }

  static String purchase(Purchase purchase) {
    if (purchase.putUps().isEmpty()) {
      return Say.text("{0}: nothing shows how it is put up", purchase.yarn());
    }
    int putUps = purchase.putUps().getAsInt();
    String yarn = purchase.holds().map(holds -> Say.text("{0} of {1}, {2}", putUps, Wording.yarn(holds), purchase.yarn())).orElseGet(() -> Say.text("{0}, {1}", putUps, purchase.yarn()));
    return purchase.each().map(each -> Say.text("{0} at {1}", yarn, Wording.money(each))).orElseGet(() -> Say.text("{0}, at a price that is not known", yarn));
  }

  /** Where what is left of a yarn is, and whether it is of use. */
  static String remnant(Remnant remnant) {
    String where = remnant.skein().isEmpty() ? Say.text("of what is bought") : remnant.skein();
    String left = Wording.yarn(remnant.left());
    return remnant.useful() ? Say.text("{0}, {1} {2}", where, left, remnant.yarn()) : Say.text("{0}, {1} {2}, too short to weave from", where, left, remnant.yarn());
  }

  /** Where yarn of a plan is that has left the shelf. */
  static String place(Place.Kind place) {
    return switch (place) {
      case LOOM -> Say.text("On the loom");
      case CLOTH -> Say.text("In the cloth");
      case THRUMS -> Say.text("Thrums");
      case SAMPLE -> Say.text("Samples");
      case MAKER, ORDERED, SHELF, RESERVED, AWAY, RECOUNT, REWOUND -> throw new IllegalArgumentException(place + " is nowhere that a plan spends yarn");
    };
  }
}
