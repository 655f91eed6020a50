package hankbook.ledger;

import hankbook.measure.Length;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * What becomes of a skein at a place.
 *
 * @param holding the skein and the place
 * @param now what is there
 * @param then what would be there, which may be less than nothing
 */
public record Change(Holding holding, Length now, Length then) {
  /** What taking entries back, all of them together, would change, in the order in which they name the places. What would stay as it is is left out. */
  public static List<Change> takingBack(List<Entry> entries, Known ledger) {
    Map<Holding, Length> sums = new LinkedHashMap<>();
    entries.forEach(entry -> Balances.add(sums, entry.mirror()));
    return sums.entrySet().stream()
        .filter(change -> !change.getValue().isZero())
        .map(change -> new Change(change.getKey(), ledger.balance(change.getKey()), ledger.balance(change.getKey()).plus(change.getValue())))
        .toList();
  }

  /** Whether more would be taken from the place than is there. */
  public boolean lacks() {
    return holding.place().neverNegative() && then.isNegative() && then.compareTo(now) < 0;
  }
}
