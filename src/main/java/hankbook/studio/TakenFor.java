package hankbook.studio;

import hankbook.ledger.Entry;
import hankbook.ledger.EntryKind;
import hankbook.ledger.Place;
import hankbook.ledger.Transfer;
import hankbook.measure.Length;
import hankbook.store.PlanVersion;
import hankbook.store.RecordedEntry;
import hankbook.store.Session;
import java.time.Instant;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;

/**
 * For which version of a plan its yarn was taken, and when: the first that was reserved or drawn since the plan last had nothing counts, entries that were
 * taken back aside.
 *
 * @param entries of the plan that stand, first to last
 */
record TakenFor(String plan, List<RecordedEntry> entries) {
  static TakenFor of(Session session, String plan) {
    List<RecordedEntry> all = session.entries().ofPlan(plan);
    Map<UUID, UUID> reversedBy = new HashMap<>();
    all.forEach(recorded -> recorded.entry().reverses().ifPresent(original -> reversedBy.put(original, recorded.entry().id())));
    return new TakenFor(plan, all.stream().filter(recorded -> stands(recorded.entry(), reversedBy)).toList());
  }

  private static boolean stands(Entry entry, Map<UUID, UUID> reversedBy) {
    boolean stands = true;
    for (UUID by = reversedBy.get(entry.id()); by != null; by = reversedBy.get(by)) {
      stands = !stands;
    }
    return stands && entry.kind() != EntryKind.REVERSAL;
  }

  /** The version of the plan; empty where nothing was ever taken for it. */
  Optional<PlanVersion> version(Session session) {
    return since().flatMap(moment -> session.plans().at(plan, moment));
  }

  private Optional<Instant> since() {
    Optional<Instant> since = Optional.empty();
    Length has = Length.ZERO;
    for (RecordedEntry recorded : entries) {
      Length after = has.plus(gain(recorded.entry()));
      since = has.isZero() && after.isPositive() ? Optional.of(recorded.recorded()) : since;
      has = after;
    }
    return since;
  }

  private Length gain(Entry entry) {
    return entry.transfers().stream().map(transfer -> gain(transfer)).reduce(Length.ZERO, Length::plus);
  }

  private Length gain(Transfer transfer) {
    Length in = isHad(transfer.to()) ? transfer.length() : Length.ZERO;
    return isHad(transfer.from()) ? in.minus(transfer.length()) : in;
  }

  private boolean isHad(Place place) {
    return place.equals(new Place.Reserved(plan)) || place.equals(new Place.Loom(plan));
  }

  /** The day on which yarn was last taken for it, some entries aside. */
  Optional<LocalDate> lastTaken(Set<UUID> aside) {
    return entries.stream()
        .map(RecordedEntry::entry)
        .filter(entry -> entry.kind() == EntryKind.RESERVE || entry.kind() == EntryKind.DRAW)
        .filter(entry -> !aside.contains(entry.id()))
        .map(Entry::date)
        .max(Comparator.naturalOrder());
  }
}
