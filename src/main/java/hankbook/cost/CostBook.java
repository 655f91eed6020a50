package hankbook.cost;

import hankbook.ledger.Entry;
import hankbook.ledger.Holding;
import hankbook.ledger.Place;
import hankbook.measure.Length;
import hankbook.measure.Phrase;
import hankbook.measure.Unreadable;
import java.time.LocalDate;
import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.Predicate;
import java.util.function.UnaryOperator;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;

/**
 * What every length of yarn cost, wherever it is: the cost goes with the yarn from place to place, in proportion to its length and to the coin, and all of it
 * with all of the yarn (identified cost). So, for each skein, what it cost at all places together is what was paid for it, less what is still to come.
 *
 * <p>Yarn that a recount does not find leaves its cost among the recounts; yarn that is found comes back with what lies there of its skein, and beyond that
 * free of cost. A reversal moves back the cost that its original moved.
 */
public final class CostBook {
  private final CurrencyUnit currency;
  private final SortedMap<Holding, Worth> held;
  private final SortedMap<String, Money> toCome;
  private final SortedSet<String> unknown;

  private CostBook(CurrencyUnit currency, Map<Holding, Worth> held, Map<String, Money> toCome, Set<String> unknown) {
    this.currency = currency;
    SortedMap<Holding, Worth> sorted = new TreeMap<>(held);
    sorted.values().removeIf(worth -> worth.length().isZero());
    this.held = Collections.unmodifiableSortedMap(sorted);
    SortedMap<String, Money> owed = new TreeMap<>(toCome);
    owed.values().removeIf(Money::isZero);
    this.toCome = Collections.unmodifiableSortedMap(owed);
    this.unknown = Collections.unmodifiableSortedSet(new TreeSet<>(unknown));
  }

  /**
   * The costs as a whole ledger leaves them.
   *
   * @param currency of every cost
   * @param entries the ledger's, by number
   * @param paid for each skein whose cost is known, at least zero
   * @throws Unreadable if something was paid in another currency
   */
  public static CostBook of(CurrencyUnit currency, List<Entry> entries, Map<String, Money> paid) {
    return of(currency, entries, paid, _ -> true);
  }

  /**
   * The costs as they were at the end of a day, by the dates that the entries bear.
   *
   * @throws Unreadable if something was paid in another currency
   */
  public static CostBook upTo(LocalDate day, CurrencyUnit currency, List<Entry> entries, Map<String, Money> paid) {
    return of(currency, entries, paid, entry -> !entry.date().isAfter(day));
  }

  static CostBook of(CurrencyUnit currency, List<Entry> entries, Map<String, Money> paid, Predicate<Entry> counts) {
    paid.values().forEach(cost -> check(currency, cost));
    Makers makers = new Makers(currency, paid, entries);
    CostReplay replay = new CostReplay(currency, makers, UnaryOperator.identity());
    UnknownCosts unknown = new UnknownCosts(paid.keySet());
    entries.stream().filter(counts).forEach(entry -> unknown.learn(replay.add(entry)));
    return new CostBook(currency, replay.held(), makers.toCome(), unknown.skeins());
  }

  private static void check(CurrencyUnit currency, Money cost) {
    if (!cost.getCurrencyUnit().equals(currency)) {
      throw new Unreadable(cost.toString(), Phrase.of("a cost in {0}", currency));
    }
    if (cost.isNegative()) {
      throw new Unreadable(cost.toString(), "a cost of at least zero");
    }
  }

  /** The currency of every cost. */
  public CurrencyUnit currency() {
    return currency;
  }

  /** What is where, with what is known of its cost; no empty place, and not the maker. A skein of unknown cost stands here with none. */
  public SortedMap<Holding, Worth> held() {
    return held;
  }

  /** The skeins whose cost is not known, or not wholly, whatever became of them. */
  public SortedSet<String> unknown() {
    return unknown;
  }

  /** What was paid for skeins that have not come by the ledger, by skein. */
  public SortedMap<String, Money> toCome() {
    return toCome;
  }

  /** What a skein is and cost at some places together; empty where its cost is not known. */
  public Optional<Worth> worth(String skein, Predicate<Place> places) {
    return unknown.contains(skein) ? Optional.empty() : Optional.of(sum(holding -> holding.skein().equals(skein) && places.test(holding.place())));
  }

  /** What there is at some places of all skeins of known cost, and what it cost. */
  public Worth worth(Predicate<Place> places) {
    return sum(holding -> places.test(holding.place()));
  }

  /** How much there is at some places of skeins of unknown cost. */
  public Length withoutCost(Predicate<Place> places) {
    Length sum = Length.ZERO;
    for (Map.Entry<Holding, Worth> one : held.entrySet()) {
      boolean counts = unknown.contains(one.getKey().skein()) && places.test(one.getKey().place());
      sum = counts ? sum.plus(one.getValue().length()) : sum;
    }
    return sum;
  }

  /**
   * What there is of a plan's yarn of known cost, and what it cost, by where it is: set aside, on the loom, in the cloth, its thrums, its samples; without
   * the places it has none at.
   */
  public Map<Place.Kind, Worth> plan(String plan) {
    Map<Place.Kind, Worth> places = new EnumMap<>(Place.Kind.class);
    held.forEach((holding, worth) -> {
      if (holding.place().kind().planned() && holding.place().planName().equals(plan)) {
        places.merge(holding.place().kind(), counted(holding, worth), Worth::plus);
      }
    });
    return places;
  }

  /** The plans that have yarn at any place of theirs, in order. */
  public Set<String> plans() {
    Set<String> plans = new TreeSet<>();
    held.keySet().stream().map(holding -> holding.place().planName()).filter(plan -> !plan.isEmpty()).forEach(plans::add);
    return Collections.unmodifiableSet(plans);
  }

  private Worth sum(Predicate<Holding> of) {
    Worth sum = new Worth(Length.ZERO, Money.zero(currency));
    for (Map.Entry<Holding, Worth> one : held.entrySet()) {
      sum = of.test(one.getKey()) ? sum.plus(counted(one.getKey(), one.getValue())) : sum;
    }
    return sum;
  }

  /** A skein of unknown cost counts with no length; where yarn that was paid for is wound onto it, what is known of its cost still counts. */
  private Worth counted(Holding holding, Worth worth) {
    return unknown.contains(holding.skein()) ? new Worth(Length.ZERO, worth.cost()) : worth;
  }
}
