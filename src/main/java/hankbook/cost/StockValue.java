package hankbook.cost;

import hankbook.ledger.Holding;
import hankbook.ledger.Place;
import hankbook.measure.Length;
import java.util.Collections;
import java.util.SortedMap;
import java.util.TreeMap;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;

/**
 * What the yarn in the house is worth, skein by skein and place by place: on the shelf, set aside and on looms.
 *
 * @param method by which it is valued
 * @param currency of every value
 * @param inTheHouse yarn of known cost and its value
 * @param onOrder yarn of known cost that is on order, always at what is paid for it; no part of the stock
 * @param withoutCost yarn in the house of which nobody wrote down what it cost
 */
public record StockValue(
    ValueMethod method, CurrencyUnit currency, SortedMap<Holding, Worth> inTheHouse, SortedMap<Holding, Worth> onOrder, SortedMap<Holding, Length> withoutCost) {
  public StockValue {
    inTheHouse = Collections.unmodifiableSortedMap(new TreeMap<>(inTheHouse));
    onOrder = Collections.unmodifiableSortedMap(new TreeMap<>(onOrder));
    withoutCost = Collections.unmodifiableSortedMap(new TreeMap<>(withoutCost));
  }

  /** Whether yarn at a place is stock: on the shelf, set aside or on a loom. */
  public static boolean isInTheHouse(Place place) {
    return switch (place) {
      case Place.Shelf _, Place.Reserved _, Place.Loom _ -> true;
      default -> false;
    };
  }

  /** All of known cost in the house. */
  public Worth total() {
    return sum(inTheHouse);
  }

  /** All of known cost that is on order. */
  public Worth ordered() {
    return sum(onOrder);
  }

  private Worth sum(SortedMap<Holding, Worth> worths) {
    return worths.values().stream().reduce(new Worth(Length.ZERO, Money.zero(currency)), Worth::plus);
  }
}
