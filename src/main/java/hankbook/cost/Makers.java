package hankbook.cost;

import hankbook.ledger.Entry;
import hankbook.ledger.Place;
import hankbook.ledger.Transfer;
import hankbook.measure.Length;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;

/**
 * What was paid for each skein and has not come with it yet. A skein that comes in parts brings its cost in proportion to all that is received of it: to
 * the nearest coin of what has come so far, and the last part brings what is left. Changes in place.
 */
final class Makers {
  private final Money none;
  private final Map<String, Length> received = new HashMap<>();
  private final Map<String, Money> paid;
  private final Map<String, Length> come = new HashMap<>();
  private final Map<String, Money> toCome;
  private final Map<String, Integer> lastTurnedTo = new HashMap<>();
  private final Set<String> turnedToNow = new HashSet<>();
  private int entry;

  /**
   * Nothing has come yet.
   *
   * @param paid for each skein whose cost is known
   * @param entries the whole ledger, which says how much is received of each skein in the end
   */
  Makers(CurrencyUnit currency, Map<String, Money> paid, List<Entry> entries) {
    none = Money.zero(currency);
    this.paid = Map.copyOf(paid);
    toCome = new HashMap<>(paid);
    entries.forEach(entry -> entry.transfers().forEach(this::count));
  }

  private void count(Transfer transfer) {
    if (transfer.from() instanceof Place.Maker) {
      received.merge(transfer.skein(), transfer.length(), Length::plus);
    } else if (transfer.to() instanceof Place.Maker) {
      received.merge(transfer.skein(), transfer.length().negated(), Length::plus);
    }
  }

  /** Turns to the next entry; gives its number among those that are replayed. */
  int next() {
    turnedToNow.forEach(skein -> lastTurnedTo.put(skein, entry));
    turnedToNow.clear();
    entry++;
    return entry;
  }

  /** The cost that comes with so much of a skein. */
  Money send(String skein, Length length) {
    Money cost = sends(skein, length);
    leaves(skein, length, cost);
    return cost;
  }

  /** Sends what an entry took back, with the cost it had where nothing has come or gone since. */
  Money sendAgain(String skein, Length length, Money had, int takenBack) {
    Money cost = isLast(skein, takenBack) ? had : sends(skein, length);
    leaves(skein, length, cost);
    return cost;
  }

  /**
   * The cost that is wanted back with so much of a skein that an entry had sent. None is where as much has come otherwise as is received of the skein in the
   * end, for then its cost is the cost of that.
   */
  Money goesBack(String skein, Length length, Money had, int sent) {
    boolean restHasCome = come(skein).minus(length).compareTo(of(received, skein)) >= 0 && of(received, skein).isPositive();
    return restHasCome && !isLast(skein, sent) ? none : had;
  }

  /** Takes back so much of a skein with a cost. */
  void takeBack(String skein, Length length, Money cost) {
    leaves(skein, length.negated(), cost.negated());
  }

  /** Whether a skein that was written down without a length still has its cost to come: then what a recount finds of it is what came. */
  boolean waitsForARecount(String skein) {
    return of(received, skein).isZero() && come(skein).isZero() && toCome.getOrDefault(skein, none).isPositive();
  }

  /** What was paid and has not come, for each skein. */
  Map<String, Money> toCome() {
    return toCome;
  }

  private boolean isLast(String skein, int one) {
    return lastTurnedTo.getOrDefault(skein, 0) == one;
  }

  private Money sends(String skein, Length length) {
    Money left = toCome.getOrDefault(skein, none);
    Money kept = kept(skein, come(skein).plus(length));
    return left.isGreaterThan(kept) ? left.minus(kept) : none;
  }

  /** What is still to come when so much has. */
  private Money kept(String skein, Length soFar) {
    Money all = paid.getOrDefault(skein, none);
    Length whole = of(received, skein);
    if (!soFar.isPositive()) {
      return all;
    }
    return soFar.compareTo(whole) >= 0 ? none : new Worth(whole, all).without(soFar).cost();
  }

  private void leaves(String skein, Length length, Money cost) {
    come.merge(skein, length, Length::plus);
    turnedToNow.add(skein);
    if (!cost.isZero()) {
      toCome.put(skein, toCome.getOrDefault(skein, none).minus(cost));
    }
  }

  private Length come(String skein) {
    return of(come, skein);
  }

  private static Length of(Map<String, Length> lengths, String skein) {
    return lengths.getOrDefault(skein, Length.ZERO);
  }
}
