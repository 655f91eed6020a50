package hankbook.cost;

import java.util.List;
import org.joda.money.Money;

/**
 * A line of a purchase with its shares of what was paid for all lines.
 *
 * @param line as it was bought
 * @param carriage its share, in the currency of that charge
 * @param duty likewise
 * @param discount its share of what was taken off
 * @param skeins at least one: what each cost in the home currency
 */
public record LandedLine(PurchaseLine line, Money carriage, Money duty, Money discount, List<LandedSkein> skeins) {
  public LandedLine {
    skeins = List.copyOf(skeins);
  }

  /** What it cost in the home currency, which is the sum of what its skeins cost. */
  public Money landed() {
    return Money.total(skeins.stream().map(LandedSkein::cost).toList());
  }
}
