package hankbook.cost;

import hankbook.ledger.Place;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;
import java.util.stream.IntStream;
import org.apache.commons.numbers.fraction.BigFraction;
import org.joda.money.Money;

/** Shares the cost of the yarn that one entry winds off over the yarn that it winds on, by length. */
final class Rewinding {
  private Rewinding() {}

  /**
   * The moves of one entry with the cost that each brings, which is what it took but where yarn goes from one skein to another.
   *
   * @param takings what each transfer took
   * @param originals what the reversed entry moved, in the same order, each getting back its own; empty where none is reversed
   */
  static List<Moved> shared(List<Moved> takings, List<Moved> originals) {
    List<Integer> off = indexes(takings, move -> move.to().place() instanceof Place.Rewound);
    List<Integer> on = indexes(takings, move -> move.from().place() instanceof Place.Rewound && move.arrived().isPositive());
    List<Moved> moves = new ArrayList<>(takings);
    if (on.isEmpty()) {
      off.forEach(i -> moves.set(i, takings.get(i).keeping()));
    } else if (!off.isEmpty()) {
      Money through = off.stream().map(i -> takings.get(i).out()).reduce(Money::plus).orElseThrow();
      List<Money> parts = SharedOut.of(through, weights(takings, originals, on));
      off.forEach(i -> moves.set(i, takings.get(i).arriving(Money.zero(through.getCurrencyUnit()))));
      for (int i = 0; i < on.size(); i++) {
        Moved taking = takings.get(on.get(i));
        moves.set(on.get(i), taking.arriving(taking.out().plus(parts.get(i))));
      }
    }
    return List.copyOf(moves);
  }

  private static List<Integer> indexes(List<Moved> moves, Predicate<Moved> which) {
    return IntStream.range(0, moves.size()).filter(i -> which.test(moves.get(i))).boxed().toList();
  }

  private static List<BigFraction> weights(List<Moved> takings, List<Moved> originals, List<Integer> on) {
    boolean hadCost = !originals.isEmpty() && on.stream().anyMatch(i -> originals.get(i).out().isPositive());
    return on.stream()
        .map(i -> hadCost ? BigFraction.of(originals.get(i).out().getAmountMinorLong()) : takings.get(i).arrived().exactTenths())
        .toList();
  }
}
