package hankbook.studio;

import hankbook.ledger.Balances;
import hankbook.ledger.Holding;
import hankbook.ledger.Place;
import hankbook.ledger.Transfer;
import hankbook.measure.Length;
import hankbook.store.Remeasurement;
import hankbook.store.Session;
import hankbook.yarn.Skein;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;

/**
 * Two skeins as they are once yarn was wound off the one onto the other.
 *
 * @param off what the yarn came off
 * @param onto what it was wound onto
 */
public record Rewound(ShelfSkein off, ShelfSkein onto) {
  static Rewound of(Session session, Rewinding.Winding winding) {
    Skein off = session.skeins().find(winding.off().skein().code()).orElseThrow();
    return new Rewound(after(session, off, winding), after(session, winding.onto(), winding));
  }

  private static ShelfSkein after(Session session, Skein skein, Rewinding.Winding winding) {
    String code = skein.code();
    List<Remeasurement> again = new ArrayList<>(session.remeasurements().of(code));
    winding.measured().filter(measured -> measured.skein().equals(code)).ifPresent(again::add);
    Balances before = session.balances().ofSkein(code);
    boolean woundOnly = before.lengths().isEmpty() || session.balances().woundOnly().contains(code);
    return ShelfSkein.of(skein, after(before, winding.transfers().stream().filter(transfer -> transfer.skein().equals(code))), again,
        session.gristSamples().of(skein.yarn().yarn()), woundOnly);
  }

  private static Balances after(Balances before, Stream<Transfer> transfers) {
    Map<Holding, Length> lengths = new TreeMap<>(before.lengths());
    transfers.forEach(transfer -> {
      add(lengths, transfer.skein(), transfer.from(), transfer.length().negated());
      add(lengths, transfer.skein(), transfer.to(), transfer.length());
    });
    return new Balances(lengths);
  }

  private static void add(Map<Holding, Length> lengths, String code, Place place, Length more) {
    lengths.merge(new Holding(code, place), more, Length::plus);
  }
}
