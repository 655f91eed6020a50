package hankbook.desktop;

import hankbook.desktop.say.Say;
import hankbook.measure.Length;
import hankbook.studio.ShelfSkein;
import hankbook.yarn.Skein;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * A skein that a purchase may pay for.
 *
 * @param code its code
 * @param hex its colour, or empty
 * @param words its yarn, how long it was sold as, and when it came
 * @param came the day, where it is known
 * @param paidBy the number of the purchase that stands and paid for it
 * @param wound whether it was wound off another skein, whose cost came with the yarn
 * @param searched the text it is searched by
 */
record SkeinToPay(String code, String hex, String words, Optional<LocalDate> came, OptionalInt paidBy, boolean wound, String searched) {
  /** Those that came last stand first, since a bill comes with its yarn. */
  static final Comparator<SkeinToPay> NEWEST_FIRST =
      Comparator.comparing((SkeinToPay skein) -> skein.came().orElse(LocalDate.MIN)).reversed().thenComparing(SkeinToPay::code);

  static SkeinToPay of(ShelfSkein held, OptionalInt paidBy, boolean wound) {
    Skein skein = held.skein();
    Length sold = skein.label().orElse(skein.holds());
    String came = skein.received().map(day -> Say.text("came {0}", day)).orElse("");
    String words = skein.yarn() + (sold.isPositive() ? ", " + Wording.metres(sold) : "") + (came.isEmpty() ? "" : ", " + came);
    String searched = PlainWords.of(skein.code(), words, skein.lot(), skein.fibre(), skein.location());
    return new SkeinToPay(skein.code(), skein.hex(), words, skein.received(), paidBy, wound, searched);
  }

  /** Whether it is paid for by a bill at all and no other purchase than a certain one paid for it. */
  boolean isFreeFor(OptionalInt purchase) {
    return !wound && (paidBy.isEmpty() || paidBy.equals(purchase));
  }
}
