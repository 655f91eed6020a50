package hankbook.ledger;

import hankbook.measure.Length;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;

/** How much of each skein is at each place. Nothing is kept for an empty place, so that equal balances are equal values. */
public record Balances(Map<Holding, Length> lengths) {
  public static final Balances NONE = new Balances(Map.of());

  public Balances {
    SortedMap<Holding, Length> sorted = new TreeMap<>(lengths);
    sorted.values().removeIf(Length::isZero);
    lengths = Collections.unmodifiableSortedMap(sorted);
  }

  /** The balances that entries add up to, whether or not they should have been let in. */
  public static Balances of(List<Entry> entries) {
    Map<Holding, Length> sums = new LinkedHashMap<>();
    entries.forEach(entry -> add(sums, entry.transfers()));
    return new Balances(sums);
  }

  /** What an entry changes, net, in the order in which its transfers name the places. */
  static Map<Holding, Length> changes(Entry entry) {
    Map<Holding, Length> sums = new LinkedHashMap<>();
    add(sums, entry.transfers());
    return sums;
  }

  /** The length of a skein at a place. */
  public Length at(String skein, Place place) {
    return at(new Holding(skein, place));
  }

  /** The length of a skein at a place. */
  public Length at(Holding holding) {
    return lengths.getOrDefault(holding, Length.ZERO);
  }

  /** The balances after one more entry. */
  public Balances after(Entry entry) {
    Map<Holding, Length> sums = new TreeMap<>(lengths);
    add(sums, entry.transfers());
    return new Balances(sums);
  }

  /** The balances without what some of the entries that made them moved. */
  public Balances without(List<Entry> entries) {
    Map<Holding, Length> sums = new TreeMap<>(lengths);
    entries.forEach(entry -> add(sums, entry.mirror()));
    return new Balances(sums);
  }

  /** For each skein, the sum over all places: zero for every one, or yarn appeared or vanished. */
  public Map<String, Length> sums() {
    SortedMap<String, Length> sums = new TreeMap<>();
    lengths.forEach((holding, length) -> sums.merge(holding.skein(), length, Length::plus));
    return Collections.unmodifiableSortedMap(sums);
  }

  static void add(Map<Holding, Length> sums, List<Transfer> transfers) {
    for (Transfer transfer : transfers) {
      sums.merge(new Holding(transfer.skein(), transfer.from()), transfer.length().negated(), Length::plus);
      sums.merge(new Holding(transfer.skein(), transfer.to()), transfer.length(), Length::plus);
    }
  }
}
