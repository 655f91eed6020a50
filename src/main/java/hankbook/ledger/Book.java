package hankbook.ledger;

import hankbook.measure.Length;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;

/** A ledger as it stands: its entries by id, what they add up to, where the chain ends and what has been reversed. Never changes. */
public record Book(Map<UUID, Entry> entries, Balances balances, String lastHash, Set<UUID> reversed) implements Known {
  public static final Book EMPTY = new Book(Map.of(), Balances.NONE, Chain.START, Set.of());

  public Book {
    entries = Map.copyOf(entries);
    reversed = Set.copyOf(reversed);
  }

  /** The book that a stored chain makes, taken as it is; {@link Audit} says whether it is sound. */
  public static Book of(List<ChainedEntry> chain) {
    Replay replay = new Replay();
    chain.forEach(link -> replay.add(link.entry()));
    return replay.book(chain.isEmpty() ? Chain.START : chain.getLast().hash());
  }

  /** Tries to take one more entry. Posting the same one again is harmless. */
  public Outcome post(Entry entry) {
    Optional<Refusal> refusal = Rules.refusal(entry, this);
    if (refusal.isPresent()) {
      return new Outcome.Refused(refusal.get());
    }
    Entry there = entries.get(entry.id());
    if (there != null) {
      return new Outcome.AlreadyThere(there);
    }
    ChainedEntry link = Chain.link(entries.size() + 1L, entry, lastHash);
    return new Outcome.Posted(with(link), link);
  }

  private Book with(ChainedEntry link) {
    Entry entry = link.entry();
    Map<UUID, Entry> more = new HashMap<>(entries);
    more.put(entry.id(), entry);
    Set<UUID> moreReversed = new HashSet<>(reversed);
    entry.reverses().ifPresent(moreReversed::add);
    return new Book(more, balances.after(entry), link.hash(), moreReversed);
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
    return balances.at(holding);
  }
}
