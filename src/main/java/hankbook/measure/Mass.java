package hankbook.measure;

import java.math.BigDecimal;
import java.math.RoundingMode;
import org.apache.commons.numbers.fraction.BigFraction;

/** A recorded mass: whole milligrams. */
public record Mass(long milligrams) implements Comparable<Mass> {
  public static final Mass ZERO = new Mass(0);

  /** So many of a unit, rounded to a milligram as told. */
  public static Mass of(BigDecimal count, MassUnit unit, RoundingMode rounding) {
    return new Mass(Exact.whole(Exact.of(count).multiply(unit.milligrams()), rounding));
  }

  /** So many whole grams. */
  public static Mass grams(long count) {
    return new Mass(Math.multiplyExact(count, 1000));
  }

  /**
   * Reads a number and a unit (mg g kg oz lb).
   *
   * @throws Unreadable if it is not a mass, or not one of at least zero
   */
  public static Mass parse(String text) {
    return NumberAndUnit.split(text)
        .flatMap(parts -> MassUnit.of(parts.unit()).map(unit -> of(parts.number(), unit, RoundingMode.HALF_UP)))
        .filter(mass -> mass.milligrams >= 0)
        .orElseThrow(() -> new Unreadable(text, "a mass such as 100 g (mg, g, kg, oz or lb)"));
  }

  /**
   * One in the last digit of a mass as it was written, which is what a balance that shows it so can tell: 0.01 g of {@code 0.63 g}.
   *
   * @throws Unreadable if it is not a mass, or its last digit stands for less than a milligram
   */
  public static Mass lastDigit(String text) {
    return NumberAndUnit.split(text)
        .flatMap(parts -> MassUnit.of(parts.unit()).map(unit -> of(BigDecimal.ONE.movePointLeft(parts.number().scale()), unit, RoundingMode.HALF_UP)))
        .filter(mass -> mass.milligrams > 0)
        .orElseThrow(() -> new Unreadable(text, "a mass such as 0.63 g, to the milligram at most"));
  }

  public Mass minus(Mass other) {
    return new Mass(Math.subtractExact(milligrams, other.milligrams));
  }

  /** In so many of a unit, exactly. */
  public BigFraction in(MassUnit unit) {
    return BigFraction.of(milligrams).divide(unit.milligrams());
  }

  /** In grams, exactly, with three places. */
  public BigDecimal grams() {
    return BigDecimal.valueOf(milligrams, 3);
  }

  /** In so many of a unit, with at most so many places, without trailing zeros: {@code 98.5 g}. */
  public String print(MassUnit unit, int places) {
    return Exact.plain(in(unit), places) + " " + unit.symbol();
  }

  @Override
  public int compareTo(Mass other) {
    return Long.compare(milligrams, other.milligrams);
  }

  /** In grams, exactly: the form {@link #parse} reads back. */
  @Override
  public String toString() {
    return print(MassUnit.GRAM, 3);
  }
}
