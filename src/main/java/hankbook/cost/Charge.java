package hankbook.cost;

import hankbook.measure.Unreadable;
import org.joda.money.Money;

/**
 * What was paid, or taken off, for a purchase as a whole.
 *
 * @param amount at least zero
 * @param basis by what it is shared over the lines
 */
public record Charge(Money amount, Basis basis) {
  public Charge {
    if (amount.isNegative()) {
      throw new Unreadable(amount.toString(), "an amount of at least zero");
    }
  }
}
