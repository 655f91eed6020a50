package hankbook.measure;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.math.RoundingMode;
import org.apache.commons.numbers.fraction.BigFraction;

/** Crossings between exact fractions and recorded whole numbers; each crossing names its rounding. */
public final class Exact {
  private static final BigFraction NEARLY_WHOLE = BigFraction.of(BigInteger.ONE, BigInteger.TEN.pow(9));

  private Exact() {}

  /** The exact value of a decimal number. */
  public static BigFraction of(BigDecimal decimal) {
    return decimal.scale() >= 0
        ? BigFraction.of(decimal.unscaledValue(), BigInteger.TEN.pow(decimal.scale()))
        : BigFraction.of(decimal.toBigIntegerExact());
  }

  /**
   * The whole number that a fraction is recorded as.
   *
   * @throws ArithmeticException if it does not fit a long
   */
  public static long whole(BigFraction exact, RoundingMode rounding) {
    return decimal(exact, 0, rounding).longValueExact();
  }

  /**
   * The next whole number up, where a value within 1e-9 of a whole number is that number: percentages typed with few digits must not
   * cost an end.
   */
  public static long roundedUp(BigFraction exact) {
    long nearest = whole(exact, RoundingMode.HALF_UP);
    boolean nearlyWhole = exact.subtract(nearest).abs().compareTo(NEARLY_WHOLE) <= 0;
    return nearlyWhole ? nearest : whole(exact, RoundingMode.CEILING);
  }

  /** The fraction as a decimal with so many places. */
  public static BigDecimal decimal(BigFraction exact, int places, RoundingMode rounding) {
    return new BigDecimal(exact.getNumerator()).divide(new BigDecimal(exact.getDenominator()), places, rounding);
  }

  /** The fraction as a decimal of at most so many places, without trailing zeros. */
  public static String plain(BigFraction exact, int places) {
    BigDecimal decimal = decimal(exact, places, RoundingMode.HALF_UP);
    return decimal.signum() == 0 ? "0" : decimal.stripTrailingZeros().toPlainString();
  }
}
