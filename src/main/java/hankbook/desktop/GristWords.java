package hankbook.desktop;

import hankbook.desktop.say.Say;
import hankbook.measure.Grist;
import hankbook.measure.YarnNumber;
import org.apache.commons.numbers.fraction.BigFraction;

/** A yarn's own grist beside its yarn number, in words. */
final class GristWords {
  private static final BigFraction ALIKE = BigFraction.of(1, 1000);
  private static final BigFraction MUCH = BigFraction.of(1, 4);

  private GristWords() {}

  /** A yarn heavier for its length has fewer metres to the gram. */
  static String against(Grist own, YarnNumber number) {
    BigFraction ratio = own.tex().divide(number.grist().tex()).subtract(BigFraction.ONE);
    if (ratio.abs().compareTo(ALIKE) < 0) {
      return Say.text("Its yarn number, {0}, says so too.", shown(number));
    }
    String much = Wording.percent(ratio.abs(), 1);
    String text = ratio.signum() < 0
        ? Say.text("{0} finer than its yarn number, {1}, which is {2}.", much, shown(number), shown(number.grist()))
        : Say.text("{0} heavier than its yarn number, {1}, which is {2}.", much, shown(number), shown(number.grist()));
    return ratio.abs().compareTo(MUCH) > 0 ? text + " " + Say.text("That is much: see that length, weight and yarn number are right.") : text;
  }

  /** With the user's decimal mark. */
  private static String shown(Object number) {
    return TypedText.shown(number.toString());
  }
}
