package hankbook.cost;

import hankbook.measure.Length;
import hankbook.measure.MoneyText;
import hankbook.plan.Piece;
import java.util.ArrayList;
import java.util.List;
import org.apache.commons.numbers.fraction.BigFraction;
import org.joda.money.Money;

/**
 * What the pieces of one kind cost, or are sold for: so many times an amount, of which some bear one smallest coin more so that nothing is lost.
 *
 * @param name of the kind
 * @param count how many, at least 1
 * @param all of them together
 */
public record PieceCost(String name, int count, Money all) {
  /** What each costs, or the least of it. */
  public Money each() {
    return Money.ofMinor(all.getCurrencyUnit(), all.getAmountMinorLong() / count);
  }

  /** How many of them cost one smallest coin more. */
  public int dearer() {
    return Math.toIntExact(all.getAmountMinorLong() % count);
  }

  /** As it is said: {@code 12.38 EUR}, or {@code 12.38 EUR, 2 of them 12.39 EUR}. */
  public String words() {
    Money more = Money.ofMinor(all.getCurrencyUnit(), each().getAmountMinorLong() + 1);
    return MoneyText.print(each()) + (dearer() == 0 ? "" : ", " + dearer() + " of them " + MoneyText.print(more));
  }

  /** An amount shared over kinds of pieces by the area that is woven for them, hems with it; without kinds nothing. */
  static List<PieceCost> shared(Money amount, List<Piece> pieces) {
    if (pieces.isEmpty()) {
      return List.of();
    }
    List<Money> parts = SharedOut.of(amount, pieces.stream().map(PieceCost::area).toList());
    List<PieceCost> costs = new ArrayList<>();
    for (int i = 0; i < pieces.size(); i++) {
      costs.add(new PieceCost(pieces.get(i).name(), pieces.get(i).count(), parts.get(i)));
    }
    return costs;
  }

  private static BigFraction area(Piece piece) {
    Length woven = piece.length().plus(piece.hems());
    return woven.exactTenths().multiply(piece.width().exactTenths()).multiply(piece.count());
  }
}
