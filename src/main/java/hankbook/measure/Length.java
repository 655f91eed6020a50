package hankbook.measure;

import java.math.BigDecimal;
import java.math.RoundingMode;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * A recorded length: a whole number of tenths of a millimetre, the largest unit in which the metre, the yard and the inch are all whole.
 * May be negative (a margin).
 */
public record Length(long tenthsOfMillimetre) implements Comparable<Length> {
  public static final Length ZERO = new Length(0);

  /** So many of a unit, exactly. */
  public static Length of(long count, LengthUnit unit) {
    return new Length(Math.multiplyExact(count, unit.tenthsOfMillimetre()));
  }

  /** So many of a unit, rounded to a tenth of a millimetre as told. */
  public static Length of(BigDecimal count, LengthUnit unit, RoundingMode rounding) {
    return ofTenths(Exact.of(count).multiply(unit.tenthsOfMillimetre()), rounding);
  }

  /** So many whole metres. */
  public static Length metres(long count) {
    return of(count, LengthUnit.METRE);
  }

  /** An exact number of tenths of a millimetre, rounded to a whole one as told. */
  public static Length ofTenths(BigFraction tenths, RoundingMode rounding) {
    return new Length(Exact.whole(tenths, rounding));
  }

  /**
   * Reads a number and a unit (mm cm m in ft yd), with arithmetic: {@code 70 cm}, {@code 2 x 70 cm + 5 cm}.
   *
   * @throws Unreadable if it is not a length, or not one of at least zero
   */
  public static Length parse(String text) {
    return Arithmetic.length(text);
  }

  /** The exact number of tenths of a millimetre, to reckon with. */
  public BigFraction exactTenths() {
    return BigFraction.of(tenthsOfMillimetre);
  }

  public Length plus(Length other) {
    return new Length(Math.addExact(tenthsOfMillimetre, other.tenthsOfMillimetre));
  }

  public Length minus(Length other) {
    return new Length(Math.subtractExact(tenthsOfMillimetre, other.tenthsOfMillimetre));
  }

  public Length times(long factor) {
    return new Length(Math.multiplyExact(tenthsOfMillimetre, factor));
  }

  public Length negated() {
    return new Length(Math.negateExact(tenthsOfMillimetre));
  }

  /** How many whole times another length is held in this one; zero where this one is negative. */
  public long holds(Length other) {
    if (other.tenthsOfMillimetre <= 0) {
      throw new IllegalArgumentException("length to divide by is " + other + ", wanted one over zero");
    }
    return Math.max(0, tenthsOfMillimetre / other.tenthsOfMillimetre);
  }

  public boolean isZero() {
    return tenthsOfMillimetre == 0;
  }

  public boolean isPositive() {
    return tenthsOfMillimetre > 0;
  }

  public boolean isNegative() {
    return tenthsOfMillimetre < 0;
  }

  public static Length min(Length one, Length other) {
    return one.compareTo(other) <= 0 ? one : other;
  }

  public static Length max(Length one, Length other) {
    return one.compareTo(other) >= 0 ? one : other;
  }

  /** In so many of a unit, exactly. */
  public BigFraction in(LengthUnit unit) {
    return BigFraction.of(tenthsOfMillimetre, unit.tenthsOfMillimetre());
  }

  /** In metres, exactly, with four places. */
  public BigDecimal metres() {
    return BigDecimal.valueOf(tenthsOfMillimetre, 4);
  }

  /** In so many of a unit, with at most so many places, without trailing zeros: {@code 6.43 m}. */
  public String print(LengthUnit unit, int places) {
    return Exact.plain(in(unit), places) + " " + unit.symbol();
  }

  @Override
  public int compareTo(Length other) {
    return Long.compare(tenthsOfMillimetre, other.tenthsOfMillimetre);
  }

  /** In metres, exactly: the form {@link #parse} reads back. */
  @Override
  public String toString() {
    return print(LengthUnit.METRE, 4);
  }
}
