package hankbook.gear;

import hankbook.measure.Exact;
import hankbook.measure.Grist;
import hankbook.measure.Length;
import hankbook.measure.LengthUnit;
import hankbook.measure.Unreadable;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.List;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * How many threads of a yarn lie side by side in an inch: k × √(yards to the pound), after T. R. Ashenhurst, with k 0.90 for worsted and
 * other firm yarn and 0.84 for soft woollen. Handbooks differ, so the k is always told: J. T. Taylor, Cotton Weaving and Designing, 6th ed.
 * 1909, gives 32's cotton 156 diameters, which is k 0.95.
 *
 * @param perInch threads side by side, to 20 digits of the root
 * @param factor the k they were reckoned with
 */
public record Diameters(BigFraction perInch, BigFraction factor) {
  /** Worsted and other firm yarn. */
  public static final BigFraction FIRM = BigFraction.of(9, 10);

  /** Soft woollen yarn. */
  public static final BigFraction SOFT = BigFraction.of(21, 25);

  private static final MathContext DIGITS = new MathContext(20);

  /**
   * One kind of end among others.
   *
   * @param grist of the whole end, its threads together
   * @param parts how many of them to those of the other kinds, at least 1
   */
  public record Kind(Grist grist, int parts) {
    public Kind {
      if (parts < 1) {
        throw new Unreadable(Integer.toString(parts), "at least 1 part of each kind of end");
      }
    }
  }

  /** The diameters of one yarn. */
  public static Diameters of(Grist grist, BigFraction factor) {
    return of(List.of(new Kind(grist, 1)), factor);
  }

  /** Those of several kinds of end in a given proportion: one over their mean diameter. At least one kind. */
  public static Diameters of(List<Kind> kinds, BigFraction factor) {
    if (factor.signum() <= 0 || factor.compareTo(BigFraction.of(2)) > 0) {
      throw new Unreadable(Exact.plain(factor, 6), "a k over 0, to 2: 0.9 for firm yarn, 0.84 for soft woollen");
    }
    BigFraction widths = kinds.stream().map(kind -> BigFraction.of(kind.parts()).divide(perInch(kind.grist(), factor))).reduce(BigFraction.ZERO, BigFraction::add);
    int parts = kinds.stream().mapToInt(Kind::parts).sum();
    return new Diameters(BigFraction.of(parts).divide(widths), factor);
  }

  private static BigFraction perInch(Grist grist, BigFraction factor) {
    BigFraction yards = grist.yardsPerPound();
    BigDecimal root = new BigDecimal(yards.getNumerator()).divide(new BigDecimal(yards.getDenominator()), DIGITS).sqrt(DIGITS);
    return Exact.of(root).multiply(factor);
  }

  /** As many as lie in a length. */
  public BigFraction in(Length span) {
    return perInch.multiply(span.in(LengthUnit.INCH));
  }
}
