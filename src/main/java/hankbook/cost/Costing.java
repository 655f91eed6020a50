package hankbook.cost;

import hankbook.allot.Purchase;
import hankbook.measure.Length;
import hankbook.measure.Percentage;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;

/**
 * By what a plan is costed.
 *
 * @param currency of every sum; what was paid in another is not counted
 * @param worths what is there of each skein and what was paid for it, by its code, in the order it is taken; a skein that is not there is one whose cost is
 *     not known
 * @param purchases of what the shelf does not cover
 * @param rates of work
 * @param overhead on yarn and work together
 * @param planOverhead on each plan
 * @param usefulRemnant the shortest remnant that is woven from
 */
public record Costing(
    CurrencyUnit currency, Map<String, List<Worth>> worths, List<Purchase> purchases, Rates rates, Percentage overhead, Optional<Money> planOverhead,
    Length usefulRemnant) {
  public Costing {
    Map<String, List<Worth>> copied = new LinkedHashMap<>();
    worths.forEach((code, held) -> copied.put(code, List.copyOf(held)));
    worths = Map.copyOf(copied);
    purchases = List.copyOf(purchases);
  }
}
