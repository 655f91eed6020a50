package hankbook.cost;

import hankbook.ledger.Entry;
import hankbook.ledger.Holding;
import hankbook.ledger.Place;
import hankbook.ledger.Transfer;
import hankbook.measure.Length;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.function.UnaryOperator;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;

/** A ledger being read again from its start, with the cost that goes with the yarn. Changes in place, since a copy for each entry would make it slow. */
final class CostReplay {
  private final Makers makers;
  private final UnaryOperator<Holding> pooled;
  private final Worth empty;
  private final Map<Holding, Worth> held = new HashMap<>();
  private final Map<UUID, List<Moved>> moved = new HashMap<>();

  /**
   * Nothing is anywhere yet.
   *
   * @param pooled the place whose yarn and cost a holding shares; itself for identified cost
   */
  CostReplay(CurrencyUnit currency, Makers makers, UnaryOperator<Holding> pooled) {
    this.makers = makers;
    this.pooled = pooled;
    empty = new Worth(Length.ZERO, Money.zero(currency));
  }

  /** Takes the next entry; gives what it did. A reversal of what was never taken does nothing. */
  List<Moved> add(Entry entry) {
    int number = makers.next();
    List<Moved> takings = new ArrayList<>();
    if (entry.reverses().isPresent()) {
      moved.getOrDefault(entry.reverses().get(), List.of()).forEach(original -> takings.add(takeBack(original, number)));
    } else {
      boolean windsOff = entry.transfers().stream().anyMatch(transfer -> transfer.to() instanceof Place.Rewound);
      entry.transfers().forEach(transfer -> takings.add(windsOff && transfer.from() instanceof Place.Rewound ? windOn(transfer, number) : take(transfer, number)));
    }
    List<Moved> moves = Rewinding.shared(takings, entry.reverses().map(moved::get).orElse(List.of()));
    moves.forEach(this::put);
    moved.put(entry.id(), moves);
    return moves;
  }

  /** What is where now. */
  Map<Holding, Worth> held() {
    return held;
  }

  private Moved take(Transfer transfer, int number) {
    String skein = transfer.skein();
    boolean found = transfer.from() instanceof Place.Recount && makers.waitsForARecount(skein);
    Holding from = found ? new Holding(skein, new Place.Maker()) : new Holding(skein, transfer.from());
    Holding to = new Holding(skein, transfer.to());
    Length length = transfer.length();
    if (from.place() instanceof Place.Maker) {
      Money cost = makers.send(skein, length);
      return new Moved(from, to, length, length, cost, cost, number);
    }
    Length taken = Length.min(length, at(from).length());
    Money cost = pour(from, to, taken, at(from).of(taken));
    return new Moved(from, to, taken, from.place().neverNegative() ? taken : length, cost, cost, number);
  }

  /** What is wound on with what is wound off in the same entry has the cost of that alone. */
  private Moved windOn(Transfer transfer, int number) {
    Holding from = new Holding(transfer.skein(), transfer.from());
    return new Moved(from, new Holding(transfer.skein(), transfer.to()), Length.ZERO, transfer.length(), empty.cost(), empty.cost(), number);
  }

  /** The other way round, as far as it is still there. */
  private Moved takeBack(Moved original, int number) {
    Holding from = original.to();
    Holding to = original.from();
    if (from.place() instanceof Place.Maker) {
      Money cost = makers.sendAgain(from.skein(), original.arrived(), original.in(), original.entry());
      return new Moved(from, to, /* taken= */ original.arrived(), /* arrived= */ original.taken(), cost, cost, number);
    }
    Length taken = Length.min(original.arrived(), at(from).length());
    Money had = to.place() instanceof Place.Maker ? makers.goesBack(to.skein(), original.taken(), original.in(), original.entry()) : original.in();
    Money cost = pour(from, to, taken, had);
    if (to.place() instanceof Place.Maker) {
      makers.takeBack(to.skein(), original.taken(), cost);
    }
    Length arrives = cost.isGreaterThan(original.in()) ? taken : from.place().neverNegative() ? Length.min(original.taken(), taken) : original.taken();
    return new Moved(from, to, taken, arrives, cost, cost, number);
  }

  /** Takes a length with a cost, as far as there is so much, and all the cost of all the length. */
  private Money pour(Holding from, Holding to, Length taken, Money wanted) {
    Holding pool = pooled.apply(from);
    if (pool.equals(pooled.apply(to))) {
      return empty.cost();
    }
    Worth there = held.getOrDefault(pool, empty);
    boolean all = taken.equals(there.length());
    Money cost = all || wanted.isGreaterThan(there.cost()) ? there.cost() : wanted;
    held.put(pool, new Worth(there.length().minus(taken), there.cost().minus(cost)));
    return cost;
  }

  private void put(Moved move) {
    Holding pool = pooled.apply(move.to());
    if (move.to().place() instanceof Place.Maker || pool.equals(pooled.apply(move.from()))) {
      return;
    }
    Worth there = held.getOrDefault(pool, empty);
    held.put(pool, new Worth(there.length().plus(move.arrived()), there.cost().plus(move.in())));
  }

  private Worth at(Holding holding) {
    return held.getOrDefault(pooled.apply(holding), empty);
  }
}
