package hankbook.cost;

import hankbook.ledger.Holding;
import hankbook.measure.Length;
import org.joda.money.Money;

/**
 * What one transfer did to the cost of a skein.
 *
 * @param from where it was taken
 * @param to where it went
 * @param taken how much of it was there to be taken
 * @param arrived how much of it arrived; more than was taken where a recount found yarn
 * @param out the cost that left with it
 * @param in the cost that arrived with it: the same, but where yarn is wound onto another skein
 * @param entry the number of its entry among those that are replayed
 */
record Moved(Holding from, Holding to, Length taken, Length arrived, Money out, Money in, int entry) {
  /** The same with all arriving that was taken, where a cost would else arrive with nothing. */
  Moved keeping() {
    return in.isPositive() && arrived.isZero() ? new Moved(from, to, taken, taken, out, in, entry) : this;
  }

  /** The same with another cost arriving. */
  Moved arriving(Money cost) {
    return new Moved(from, to, taken, arrived, out, cost, entry);
  }
}
