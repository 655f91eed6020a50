package hankbook.cost;

import hankbook.ledger.Entry;
import hankbook.ledger.Place;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;

/** Learns, while a ledger is replayed, what came into the house and was not taken back. Changes in place. */
final class Receipts {
  /** A length that came, and what came with it. */
  record Receipt(Entry entry, Moved move) {
    Worth worth() {
      return new Worth(move.arrived(), move.in());
    }
  }

  private final Map<UUID, List<Receipt>> all = new HashMap<>();
  private final Map<UUID, List<Receipt>> standing = new LinkedHashMap<>();
  private final Map<UUID, UUID> undoes = new HashMap<>();

  /** Takes the next entry; a reversal takes its original away, and the reversal of that puts it back. */
  void learn(Entry entry, List<Moved> moves) {
    if (entry.reverses().isPresent()) {
      UUID first = undoes.getOrDefault(entry.reverses().get(), entry.reverses().get());
      undoes.put(entry.id(), first);
      if (standing.remove(first) == null && all.containsKey(first)) {
        standing.put(first, all.get(first));
      }
      return;
    }
    List<Receipt> came = moves.stream().filter(Receipts::comesIntoTheHouse).map(move -> new Receipt(entry, move)).toList();
    if (!came.isEmpty()) {
      all.put(entry.id(), came);
      standing.put(entry.id(), came);
    }
  }

  /** What stands, by the day it came and on one day in the order it was entered, the newest first. */
  List<Receipt> newestFirst() {
    List<Receipt> receipts = new ArrayList<>();
    standing.values().forEach(receipts::addAll);
    receipts.sort(Comparator.comparing((Receipt receipt) -> receipt.entry().date()).thenComparingInt(receipt -> receipt.move().entry()));
    return receipts.reversed();
  }

  /** What is wound onto another skein came before. */
  private static boolean comesIntoTheHouse(Moved move) {
    boolean fromOutside = switch (move.from().place()) {
      case Place.Maker _, Place.Ordered _ -> true;
      default -> false;
    };
    return fromOutside && StockValue.isInTheHouse(move.to().place());
  }
}
