package hankbook.cost;

import hankbook.ledger.Entry;
import hankbook.ledger.Holding;
import hankbook.ledger.Place;
import hankbook.measure.Length;
import hankbook.yarn.YarnColour;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.function.UnaryOperator;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;

/**
 * Values the stock. By first in, first out a yarn's stock is worth what the newest metres received of it cost; metres that a recount found beyond what was
 * received have no cost. By the moving weighted average all metres of a yarn cost alike, anew after each receipt, and what is used takes its share with it.
 * Either value is shared over the skeins and places of that yarn and colour by length (largest remainder). Skeins of unknown cost count in none of it.
 */
public final class Valuation {
  private final CurrencyUnit currency;
  private final List<Entry> entries;
  private final Map<String, Money> paid;
  private final Predicate<Entry> counts;
  private final Function<String, YarnColour> yarns;

  /**
   * A ledger and what was paid for its skeins.
   *
   * @param currency of every cost
   * @param entries the whole ledger, by number
   * @param paid for each skein whose cost is known in that currency
   * @param counts which entries count, such as those up to a day
   * @param yarns the yarn and colour of each skein
   */
  public Valuation(CurrencyUnit currency, List<Entry> entries, Map<String, Money> paid, Predicate<Entry> counts, Function<String, YarnColour> yarns) {
    this.currency = currency;
    this.entries = List.copyOf(entries);
    this.paid = Map.copyOf(paid);
    this.counts = counts;
    this.yarns = yarns;
  }

  /** What each length cost by itself. */
  public CostBook book() {
    return CostBook.of(currency, entries, paid, counts);
  }

  /** The stock by a method. */
  public StockValue by(ValueMethod method) {
    CostBook book = book();
    SortedMap<Holding, Worth> onOrder = new TreeMap<>(book.held());
    onOrder.keySet().removeIf(holding -> !(holding.place() instanceof Place.Ordered) || book.unknown().contains(holding.skein()));
    SortedMap<Holding, Worth> stock = new TreeMap<>(book.held());
    stock.keySet().removeIf(holding -> !StockValue.isInTheHouse(holding.place()));
    SortedMap<Holding, Length> withoutCost = new TreeMap<>();
    stock.forEach((holding, worth) -> withoutCost.put(holding, worth.length()));
    withoutCost.keySet().removeIf(holding -> !book.unknown().contains(holding.skein()));
    stock.keySet().removeAll(withoutCost.keySet());
    return new StockValue(method, currency, valued(method, book, stock), onOrder, withoutCost);
  }

  private SortedMap<Holding, Worth> valued(ValueMethod method, CostBook book, SortedMap<Holding, Worth> stock) {
    Map<YarnColour, List<Holding>> byYarn = new TreeMap<>();
    stock.keySet().forEach(holding -> byYarn.computeIfAbsent(yarns.apply(holding.skein()), _ -> new ArrayList<>()).add(holding));
    return switch (method) {
      case IDENTIFIED -> stock;
      case FIFO -> shared(stock, byYarn, newest(book, stock, byYarn));
      case AVERAGE -> shared(stock, byYarn, average(book, byYarn));
    };
  }

  private Map<YarnColour, Money> newest(CostBook book, SortedMap<Holding, Worth> stock, Map<YarnColour, List<Holding>> byYarn) {
    Receipts receipts = new Receipts();
    CostReplay replay = new CostReplay(currency, new Makers(currency, paid, entries), UnaryOperator.identity());
    entries.stream().filter(counts).forEach(entry -> receipts.learn(entry, replay.add(entry)));
    Map<YarnColour, Length> left = new HashMap<>();
    byYarn.forEach((yarn, holdings) -> left.put(yarn, holdings.stream().map(holding -> length(stock, holding)).reduce(Length.ZERO, Length::plus)));
    Map<YarnColour, Money> values = new HashMap<>();
    for (Receipts.Receipt receipt : receipts.newestFirst()) {
      String skein = receipt.move().to().skein();
      YarnColour yarn = yarns.apply(skein);
      if (!book.unknown().contains(skein) && left.containsKey(yarn)) {
        Length wanted = left.getOrDefault(yarn, Length.ZERO);
        Length taken = Length.min(wanted, receipt.worth().length());
        left.put(yarn, wanted.minus(taken));
        values.merge(yarn, receipt.worth().of(taken), Money::plus);
      }
    }
    return values;
  }

  /** All skeins of a yarn and colour that have a cost are one pool, in the house and at each place they go to. */
  private Map<YarnColour, Money> average(CostBook book, Map<YarnColour, List<Holding>> byYarn) {
    Map<YarnColour, String> names = new HashMap<>();
    UnaryOperator<Holding> pooled = holding -> {
      boolean alone = book.unknown().contains(holding.skein()) || holding.place() instanceof Place.Maker || holding.place() instanceof Place.Ordered;
      if (alone) {
        return holding;
      }
      String name = names.computeIfAbsent(yarns.apply(holding.skein()), _ -> holding.skein());
      return new Holding(name, StockValue.isInTheHouse(holding.place()) ? new Place.Shelf() : holding.place());
    };
    CostReplay replay = new CostReplay(currency, new Makers(currency, paid, entries), pooled);
    entries.stream().filter(counts).forEach(replay::add);
    Map<YarnColour, Money> values = new HashMap<>();
    byYarn.forEach((yarn, holdings) -> values.put(yarn, Objects.requireNonNull(replay.held().get(pooled.apply(holdings.getFirst()))).cost()));
    return values;
  }

  private SortedMap<Holding, Worth> shared(SortedMap<Holding, Worth> stock, Map<YarnColour, List<Holding>> byYarn, Map<YarnColour, Money> values) {
    SortedMap<Holding, Worth> shared = new TreeMap<>();
    byYarn.forEach((yarn, holdings) -> {
      Money value = values.getOrDefault(yarn, Money.zero(currency));
      List<Money> parts = SharedOut.of(value, holdings.stream().map(holding -> length(stock, holding).exactTenths()).toList());
      for (int i = 0; i < holdings.size(); i++) {
        shared.put(holdings.get(i), new Worth(length(stock, holdings.get(i)), parts.get(i)));
      }
    });
    return shared;
  }

  private static Length length(SortedMap<Holding, Worth> stock, Holding holding) {
    return Objects.requireNonNull(stock.get(holding)).length();
  }
}
