package hankbook.cost;

import hankbook.ledger.Place;
import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;

/**
 * What the yarn of a plan has cost so far, by what the ledger says of it.
 *
 * @param places what is on the loom, in the cloth, among its thrums and its samples, and what that cost; only places where there is something
 * @param unknown the skeins there whose cost is not known, and which are in no sum
 * @param total of all places
 */
public record PlanSpent(Map<Place.Kind, Worth> places, List<String> unknown, Money total) {
  public PlanSpent {
    Map<Place.Kind, Worth> inOrder = new EnumMap<>(Place.Kind.class);
    inOrder.putAll(places);
    places = Collections.unmodifiableMap(inOrder);
    unknown = List.copyOf(unknown);
  }

  /** What a ledger says of a plan. What is only set aside for it is not spent yet. */
  public static PlanSpent of(CostBook book, String plan) {
    Map<Place.Kind, Worth> places = new EnumMap<>(Place.Kind.class);
    places.putAll(book.plan(plan));
    places.remove(Place.Kind.RESERVED);
    List<String> unknown = book.held().keySet().stream()
        .filter(holding -> holding.place().planName().equals(plan) && holding.place().kind() != Place.Kind.RESERVED && book.unknown().contains(holding.skein()))
        .map(holding -> holding.skein())
        .distinct()
        .toList();
    return new PlanSpent(places, unknown, total(book.currency(), places));
  }

  private static Money total(CurrencyUnit currency, Map<Place.Kind, Worth> places) {
    return places.values().stream().map(Worth::cost).reduce(Money.zero(currency), Money::plus);
  }

  /** Whether no yarn of it has left the shelf. */
  public boolean isNothing() {
    return places.isEmpty() && unknown.isEmpty();
  }
}
