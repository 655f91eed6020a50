package hankbook.ledger;

import hankbook.measure.Length;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;

/** The rules an entry must keep to be taken into a ledger, in the order of {@link Refusal}. */
public final class Rules {
  private Rules() {}

  /** Why an entry cannot be taken; empty where it can, or where the very same one is there already. */
  public static Optional<Refusal> refusal(Entry entry, Known ledger) {
    Optional<Entry> there = ledger.entry(entry.id());
    if (there.isPresent()) {
      return there.filter(other -> !other.equals(entry)).map(Refusal.SameIdOtherContent::new);
    }
    return entry.reverses().flatMap(original -> wrongReversal(entry, original, ledger))
        .or(() -> wrongPlaces(entry))
        .or(() -> notEnough(entry, ledger));
  }

  private static Optional<Refusal> wrongReversal(Entry entry, UUID reversed, Known ledger) {
    Optional<Entry> original = ledger.entry(reversed);
    if (original.isEmpty()) {
      return Optional.of(new Refusal.NothingToReverse(reversed));
    }
    if (ledger.isReversed(reversed)) {
      return original.map(Refusal.AlreadyReversed::new);
    }
    return original.filter(it -> !it.mirror().equals(entry.transfers())).map(Refusal.WrongReversal::new);
  }

  private static Optional<Refusal> wrongPlaces(Entry entry) {
    return entry.transfers().stream()
        .filter(transfer -> !entry.kind().allows(transfer))
        .findFirst()
        .map(transfer -> new Refusal.WrongPlaces(entry.kind(), transfer));
  }

  /** Judged on what the entry changes in all, several transfers from one place together. */
  private static Optional<Refusal> notEnough(Entry entry, Known ledger) {
    for (Map.Entry<Holding, Length> change : Balances.changes(entry).entrySet()) {
      Holding holding = change.getKey();
      Length has = ledger.balance(holding);
      if (holding.place().neverNegative() && change.getValue().isNegative() && has.plus(change.getValue()).isNegative()) {
        return Optional.of(new Refusal.NotEnough(holding.skein(), holding.place(), has, change.getValue().negated()));
      }
    }
    return Optional.empty();
  }
}
