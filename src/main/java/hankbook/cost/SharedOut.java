package hankbook.cost;

import hankbook.plan.Apportionment;
import java.util.Collections;
import java.util.List;
import org.apache.commons.numbers.fraction.BigFraction;
import org.joda.money.Money;

/** An amount of money in parts that sum to it exactly: by largest remainder, and of equal remainders the first is served first. */
final class SharedOut {
  private SharedOut() {}

  /**
   * The parts, in the order of the weights.
   *
   * @param whole at least zero
   * @param weights at least one, each at least zero; where all are zero the parts are equal
   */
  static List<Money> of(Money whole, List<BigFraction> weights) {
    BigFraction sum = weights.stream().reduce(BigFraction.ZERO, BigFraction::add);
    if (sum.signum() == 0) {
      return of(whole, Collections.nCopies(weights.size(), BigFraction.ONE));
    }
    List<BigFraction> shares = weights.stream().map(weight -> weight.divide(sum)).toList();
    return Apportionment.of(whole.getAmountMinorLong(), shares, "an amount").stream().map(part -> Money.ofMinor(whole.getCurrencyUnit(), part)).toList();
  }
}
