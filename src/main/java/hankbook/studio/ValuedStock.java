package hankbook.studio;

import hankbook.cost.PaidFor;
import hankbook.cost.StockValue;
import hankbook.cost.Worth;
import hankbook.ledger.Holding;
import hankbook.ledger.Place;
import hankbook.measure.Grist;
import hankbook.measure.Length;
import hankbook.measure.Mass;
import hankbook.yarn.Skein;
import java.math.RoundingMode;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * What the stock is worth, and what became of what was paid, in one currency.
 *
 * @param on the day at whose end that was; empty for all that the ledger holds
 * @param value of the stock
 * @param paid what became of all that was paid in that currency
 * @param skeins every skein of the ledger, by code
 */
public record ValuedStock(Optional<LocalDate> on, StockValue value, PaidFor paid, Map<String, Skein> skeins) {
  /** What every report of it must say beside the numbers. */
  public static final String CAUTION =
      "How stock is valued for taxes follows the rules of the place and the advice of someone licensed to give it; these figures are the book's alone.";

  public ValuedStock {
    skeins = Map.copyOf(skeins);
  }

  /** The stock of known cost in groups, in the order of their names. */
  public List<ValueRow> rows(ValueBy by) {
    SortedMap<String, ValueRow> rows = new TreeMap<>();
    value.inTheHouse().forEach((holding, worth) -> rows.merge(name(holding, by), row(name(holding, by), holding, worth), ValueRow::plus));
    return new ArrayList<>(rows.values());
  }

  /** All of it in one row without a name. */
  public ValueRow total() {
    ValueRow nothing = new ValueRow("", value.total().without(value.total().length()), new Mass(0), Length.ZERO);
    return value.inTheHouse().entrySet().stream().map(held -> row("", held.getKey(), held.getValue())).reduce(nothing, ValueRow::plus);
  }

  /** How much of each skein there is in the house of which it is not known, or not wholly, what it cost, by its code; not what was paid in another currency. */
  public SortedMap<String, Length> withoutCost() {
    SortedMap<String, Length> lengths = new TreeMap<>();
    value.withoutCost().forEach((holding, length) -> {
      if (skein(holding).cost().filter(cost -> !cost.getCurrencyUnit().equals(value.currency())).isEmpty()) {
        lengths.merge(holding.skein(), length, Length::plus);
      }
    });
    return lengths;
  }

  private Skein skein(Holding holding) {
    return Objects.requireNonNull(skeins.get(holding.skein()));
  }

  private String name(Holding holding, ValueBy by) {
    Skein skein = skein(holding);
    return switch (by) {
      case YARN -> skein.yarn().toString();
      case FIBRE -> skein.fibre();
      case PLACE -> place(holding.place());
      case LOCATION -> skein.location();
    };
  }

  private static String place(Place place) {
    return switch (place) {
      case Place.Reserved(String plan) -> "reserved for " + plan;
      case Place.Loom(String plan) -> "on the loom for " + plan;
      default -> "shelf";
    };
  }

  private ValueRow row(String name, Holding holding, Worth worth) {
    Optional<Grist> grist = skein(holding).knownGrist();
    Mass mass = grist.map(known -> known.massOf(worth.length(), RoundingMode.HALF_UP)).orElse(new Mass(0));
    return new ValueRow(name, worth, mass, grist.isPresent() ? Length.ZERO : worth.length());
  }
}
