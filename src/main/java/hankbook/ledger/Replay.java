package hankbook.ledger;

import hankbook.measure.Length;
import java.util.HashMap;
import java.util.HashSet;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;

/** A ledger being read again from its start; changes in place, since a copy for each entry would make a long audit slow. */
final class Replay implements Known {
  private final Map<UUID, Entry> entries = new HashMap<>();
  private final Set<UUID> reversed = new HashSet<>();
  private final Map<Holding, Length> balances = new HashMap<>();

  void add(Entry entry) {
    entries.put(entry.id(), entry);
    entry.reverses().ifPresent(reversed::add);
    Balances.add(balances, entry.transfers());
  }

  @Override
  public Optional<Entry> entry(UUID id) {
    return Optional.ofNullable(entries.get(id));
  }

  @Override
  public boolean isReversed(UUID id) {
    return reversed.contains(id);
  }

  @Override
  public Length balance(Holding holding) {
    return balances.getOrDefault(holding, Length.ZERO);
  }

  /** The book that what was read so far makes. */
  Book book(String lastHash) {
    return new Book(entries, new Balances(balances), lastHash, reversed);
  }
}
