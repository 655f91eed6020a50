package hankbook.allot;

import hankbook.measure.Length;
import hankbook.measure.LengthUnit;
import hankbook.measure.Sett;
import hankbook.plan.Plan;
import java.math.BigDecimal;
import java.math.RoundingMode;

/** In what steps a weaver would change a quantity of a plan: fine enough to matter, coarse enough to measure. */
final class Steps {
  private static final Length CENTIMETRE = Length.of(1, LengthUnit.CENTIMETRE);
  private static final Length HALF_CENTIMETRE = Length.of(5, LengthUnit.MILLIMETRE);
  private static final Length HALF_INCH = new Length(LengthUnit.INCH.tenthsOfMillimetre() / 2);
  private static final BigDecimal HALF = new BigDecimal("0.5");

  private Steps() {}

  /** The plan's own rounding of the warp, or a centimetre where it has none. */
  static Length ofWarp(Plan plan) {
    return plan.allowances().roundUpTo().isPositive() ? plan.allowances().roundUpTo() : CENTIMETRE;
  }

  /** A centimetre; half an inch where the length is whole in half inches and not in centimetres. */
  static Length ofLength(Length length) {
    return isImperial(length) ? HALF_INCH : CENTIMETRE;
  }

  /** Half a centimetre or half an inch. */
  static Length ofWidth(Length width) {
    return isImperial(width) ? HALF_INCH : HALF_CENTIMETRE;
  }

  private static boolean isImperial(Length length) {
    return length.tenthsOfMillimetre() % HALF_INCH.tenthsOfMillimetre() == 0 && length.tenthsOfMillimetre() % CENTIMETRE.tenthsOfMillimetre() != 0;
  }

  /** So many half threads to the inch or the centimetre, whichever the sett counts by. */
  static Sett sett(long halves, Sett like) {
    return Sett.parse(new Sett(halfThread(like).multiply(BigDecimal.valueOf(halves)), like.span()).toString());
  }

  /** How many half threads lie under a sett: the fewest whose sett is not less than it. */
  static long halvesReaching(Sett sett) {
    return sett.threads().divide(halfThread(sett), 0, RoundingMode.CEILING).longValueExact();
  }

  private static BigDecimal halfThread(Sett like) {
    long centimetres = like.span().holds(CENTIMETRE);
    boolean metric = like.span().equals(CENTIMETRE.times(centimetres));
    return metric ? HALF.multiply(BigDecimal.valueOf(centimetres)) : HALF;
  }

  /** How many steps it takes to reach a length. */
  static long reaching(Length length, Length step) {
    return Math.ceilDiv(length.tenthsOfMillimetre(), step.tenthsOfMillimetre());
  }
}
