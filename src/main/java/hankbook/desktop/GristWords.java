package hankbook.desktop;

import hankbook.measure.Exact;
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
      return "Its yarn number, " + number + ", says so too.";
    }
    String much = Exact.plain(ratio.abs().multiply(100), 1) + " %";
    String text = much + (ratio.signum() < 0 ? " finer" : " heavier") + " than its yarn number, " + number + ", which is " + number.grist() + ".";
    return ratio.abs().compareTo(MUCH) > 0 ? text + " That is much: see that length, weight and yarn number are right." : text;
  }
}
