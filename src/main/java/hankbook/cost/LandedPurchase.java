package hankbook.cost;

import java.util.List;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;

/**
 * A purchase and what everything in it cost with all that was paid to have it, as it was worked out when it was entered: measuring a skein again later
 * does not change what was paid for it.
 *
 * @param purchase as it was paid
 * @param lines at least one, in the order of the purchase's
 */
public record LandedPurchase(Purchase purchase, List<LandedLine> lines) {
  public LandedPurchase {
    lines = List.copyOf(lines);
  }

  /** All that was paid, in the home currency; the costs of its skeins sum to it exactly. */
  public Money total() {
    return Money.total(lines.stream().map(LandedLine::landed).toList());
  }

  /** The home currency as it was. */
  public CurrencyUnit home() {
    return total().getCurrencyUnit();
  }

  /** Every skein with what it cost, line by line. */
  public List<LandedSkein> skeins() {
    return lines.stream().flatMap(line -> line.skeins().stream()).toList();
  }
}
