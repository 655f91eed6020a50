package hankbook.cost;

import hankbook.measure.Length;
import hankbook.measure.Phrase;
import hankbook.measure.Unreadable;
import java.math.BigDecimal;
import java.math.BigInteger;
import java.math.RoundingMode;
import org.joda.money.Money;

/**
 * A length of yarn and what was paid for it: the two are kept, and a price by the metre is only ever derived, so that the last bit of a skein takes the
 * last coin with it.
 *
 * @param length at least zero
 * @param cost what was paid for that length, at least zero
 */
public record Worth(Length length, Money cost) {
  public Worth {
    if (length.isNegative()) {
      throw new Unreadable(length.toString(), "a length of at least zero");
    }
    if (cost.isNegative()) {
      throw new Unreadable(cost.toString(), "a cost of at least zero");
    }
  }

  /**
   * What a part of the length cost, to the nearest smallest coin; all of it for all of the length.
   *
   * @throws Unreadable if the part is longer than the whole, or less than zero
   */
  public Money of(Length part) {
    if (part.isNegative() || part.compareTo(length) > 0) {
      throw new Unreadable(part.toString(), Phrase.of("a length from zero to {0}", length));
    }
    return part.isZero() ? Money.zero(cost.getCurrencyUnit()) : share(part);
  }

  private Money share(Length part) {
    BigInteger exact = BigInteger.valueOf(cost.getAmountMinorLong()).multiply(BigInteger.valueOf(part.tenthsOfMillimetre()));
    BigDecimal minor = new BigDecimal(exact).divide(BigDecimal.valueOf(length.tenthsOfMillimetre()), 0, RoundingMode.HALF_UP);
    return Money.ofMinor(cost.getCurrencyUnit(), minor.longValueExact());
  }

  /** The two together. */
  public Worth plus(Worth other) {
    return new Worth(length.plus(other.length), cost.plus(other.cost));
  }

  /** What is left when a part of the length is taken. */
  public Worth without(Length part) {
    return new Worth(length.minus(part), cost.minus(of(part)));
  }
}
