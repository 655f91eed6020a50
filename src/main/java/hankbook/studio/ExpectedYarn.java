package hankbook.studio;

import hankbook.ledger.Holding;
import hankbook.ledger.Place;
import hankbook.ledger.Transfer;
import hankbook.measure.Length;
import hankbook.store.Session;
import hankbook.yarn.GristSample;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** What the ledger says of yarn on order. */
final class ExpectedYarn {
  private static final Place ORDERED = new Place.Ordered();

  private ExpectedYarn() {}

  /** All of it, the earliest expected first. */
  static List<ExpectedSkein> of(Session session) {
    Map<Holding, Length> lengths = session.balances().onOrder().lengths();
    if (lengths.isEmpty()) {
      return List.of();
    }
    Map<String, LocalDate> dues = session.dues().newest();
    Map<String, GristSample> samples = session.gristSamples().all();
    List<ExpectedSkein> expected = new ArrayList<>();
    lengths.forEach((holding, length) ->
        session.skeins().find(holding.skein())
            .map(skein -> skein.withSample(Optional.ofNullable(samples.get(skein.yarn().yarn()))))
            .ifPresent(skein -> expected.add(new ExpectedSkein(skein, length, dues.getOrDefault(skein.code(), LocalDate.MAX)))));
    expected.sort(Comparator.comparing(ExpectedSkein::due).thenComparing(skein -> skein.skein().code()));
    return expected;
  }

  /** What of it counts. */
  static List<ExpectedSkein> counted(Session session, ExpectedBy by) {
    return by.equals(ExpectedBy.NOTHING) ? List.of() : of(session).stream().filter(by::counts).toList();
  }

  /** Every skein there ever was, those on order that count as though they had come. */
  static List<ShelfSkein> everySkein(Session session, List<ExpectedSkein> counted) {
    Map<String, ShelfSkein> coming = counted.stream().collect(Collectors.toMap(expected -> expected.skein().code(), ExpectedSkein::arrived));
    Stream<ShelfSkein> skeins = Shelf.everySkein(session).stream();
    return skeins.map(held -> coming.getOrDefault(held.skein().code(), held)).toList();
  }

  static boolean isOnOrder(Session session, String code) {
    return session.balances().ofSkein(code).at(code, ORDERED).isPositive();
  }

  /** The transfer that takes a skein from what is on order to the shelf. */
  static Transfer arrival(Session session, String code) {
    return new Transfer(code, ORDERED, new Place.Shelf(), session.balances().ofSkein(code).at(code, ORDERED));
  }
}
