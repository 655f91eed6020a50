package hankbook.cost;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
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

  /** The same costs where a purchase differs only in words, seller or days; empty where something else was paid, or for other skeins. */
  public Optional<LandedPurchase> saidAs(Purchase other) {
    if (!purchase.paysAlike(other)) {
      return Optional.empty();
    }
    List<LandedLine> said = new ArrayList<>();
    for (int i = 0; i < lines.size(); i++) {
      LandedLine line = lines.get(i);
      said.add(new LandedLine(other.lines().get(i), line.carriage(), line.duty(), line.discount(), line.skeins()));
    }
    return Optional.of(new LandedPurchase(other, said));
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
