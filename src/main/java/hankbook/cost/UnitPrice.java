package hankbook.cost;

import hankbook.measure.Exact;
import hankbook.measure.Length;
import hankbook.measure.LengthUnit;
import hankbook.measure.Mass;
import hankbook.measure.MassUnit;
import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import org.apache.commons.numbers.fraction.BigFraction;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;

/**
 * What a metre or a kilogram cost: derived from what was paid, exactly, and never kept.
 *
 * @param exact in whole units of the currency
 * @param currency of what was paid
 * @param unit of which it is the price
 */
public record UnitPrice(BigFraction exact, CurrencyUnit currency, String unit) {
  private static final int DIGITS = 4;

  /**
   * The price of a metre.
   *
   * @param length over zero, for which so much was paid
   */
  public static UnitPrice ofMetre(Money paid, Length length) {
    return new UnitPrice(Exact.of(paid.getAmount()).divide(length.in(LengthUnit.METRE)), paid.getCurrencyUnit(), LengthUnit.METRE.symbol());
  }

  /**
   * The price of a kilogram.
   *
   * @param mass over zero, for which so much was paid
   */
  public static UnitPrice ofKilogram(Money paid, Mass mass) {
    return new UnitPrice(Exact.of(paid.getAmount()).divide(mass.in(MassUnit.KILOGRAM)), paid.getCurrencyUnit(), MassUnit.KILOGRAM.symbol());
  }

  /** To so many decimals. */
  public BigDecimal decimal(int places) {
    return Exact.decimal(exact, places, RoundingMode.HALF_UP);
  }

  /** With four digits that count, and no more decimals of a large price than its smallest coin: {@code 0.01238}, {@code 41.20}, {@code 1234.50}. */
  public String text() {
    int coins = currency.getDecimalPlaces();
    BigDecimal rounded = new BigDecimal(exact.getNumerator()).divide(new BigDecimal(exact.getDenominator()), new MathContext(DIGITS, RoundingMode.HALF_UP));
    int counting = exact.signum() == 0 ? 0 : rounded.scale() + DIGITS - rounded.precision();
    return decimal(Math.max(coins, counting)).toPlainString();
  }
}
