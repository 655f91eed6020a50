package hankbook.cost;

import hankbook.ledger.Place;
import java.util.Arrays;
import java.util.Collections;
import java.util.EnumMap;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;

/**
 * What became of all that was paid for yarn: the parts sum to it, to the coin.
 *
 * @param paid for what came or is on order by the ledger
 * @param shelf for what lies free
 * @param onOrder for what has not come
 * @param plans for what each plan has, by where it is
 * @param lost for what went: {@code AWAY}, {@code RECOUNT}, and {@code REWOUND} where it was wound onto nothing
 * @param toCome what was paid for skeins that were written down but have no length in the ledger; no part of {@code paid}
 */
public record PaidFor(
    Money paid, Money shelf, Money onOrder, SortedMap<String, Map<Place.Kind, Money>> plans, Map<Place.Kind, Money> lost, Money toCome) {
  public PaidFor {
    plans = Collections.unmodifiableSortedMap(new TreeMap<>(plans));
    lost = Map.copyOf(lost);
  }

  /**
   * As a book says.
   *
   * @param all that was paid, for every skein of known cost
   */
  public static PaidFor of(CostBook book, Money all) {
    Money toCome = sum(book.currency(), book.toCome().values().stream());
    SortedMap<String, Map<Place.Kind, Money>> plans = new TreeMap<>();
    book.held().forEach((holding, worth) -> {
      if (holding.place().kind().planned()) {
        plans.computeIfAbsent(holding.place().planName(), _ -> new EnumMap<>(Place.Kind.class)).merge(holding.place().kind(), worth.cost(), Money::plus);
      }
    });
    Map<Place.Kind, Money> lost = new EnumMap<>(Place.Kind.class);
    Arrays.asList(Place.Kind.AWAY, Place.Kind.RECOUNT, Place.Kind.REWOUND).forEach(kind -> lost.put(kind, book.worth(place -> place.kind() == kind).cost()));
    return new PaidFor(
        all.minus(toCome), book.worth(place -> place instanceof Place.Shelf).cost(), book.worth(place -> place instanceof Place.Ordered).cost(), plans, lost, toCome);
  }

  /** What a plan's yarn cost, wherever it is. */
  public Money plan(String plan) {
    return sum(paid.getCurrencyUnit(), plans.getOrDefault(plan, Map.of()).values().stream());
  }

  /** The sum of the parts, which is what was paid. */
  public Money accounted() {
    Money planned = sum(paid.getCurrencyUnit(), plans.values().stream().flatMap(places -> places.values().stream()));
    return shelf.plus(onOrder).plus(planned).plus(sum(paid.getCurrencyUnit(), lost.values().stream()));
  }

  private static Money sum(CurrencyUnit currency, Stream<Money> amounts) {
    return amounts.reduce(Money.zero(currency), Money::plus);
  }
}
