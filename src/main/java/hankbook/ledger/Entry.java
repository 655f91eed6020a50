package hankbook.ledger;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Collectors;

/**
 * One thing that was done, as it is written down for good. Its id is made before the first attempt, so that a repeat is known for one. In
 * one entry a skein does not both leave and reach a place: so the order of its transfers never matters, to the rules or to a database that
 * takes them one by one.
 */
public record Entry(
    UUID id, EntryKind kind, LocalDate date, String author, String note, List<Transfer> transfers, Optional<UUID> reverses) {
  public Entry {
    transfers = List.copyOf(transfers);
    Words.name("author", author);
    Words.note("note", note);
    if (date.getYear() < 1 || date.getYear() > 9999) {
      throw Words.wrong("date", date, "a year from 1 to 9999");
    }
    if (transfers.isEmpty()) {
      throw Words.wrong("transfers", transfers, "at least one");
    }
    leavesAndReaches(transfers).ifPresent(holding -> {
      throw Words.wrong("transfers", holding.skein() + ", " + holding.place(), "a skein only to leave or only to reach a place in one entry");
    });
    if (reverses.isPresent() != (kind == EntryKind.REVERSAL)) {
      throw Words.wrong("reverses", reverses.map(UUID::toString).orElse(""), "an original for a reversal and none for any other entry");
    }
    if (kind == EntryKind.REVERSAL && note.isBlank()) {
      throw Words.wrong("note", note, "the reason for the reversal");
    }
  }

  private static Optional<Holding> leavesAndReaches(List<Transfer> transfers) {
    Set<Holding> left = transfers.stream().map(transfer -> new Holding(transfer.skein(), transfer.from())).collect(Collectors.toSet());
    return transfers.stream().map(transfer -> new Holding(transfer.skein(), transfer.to())).filter(left::contains).findFirst();
  }

  /** An entry that reverses nothing. */
  public static Entry of(UUID id, EntryKind kind, LocalDate date, String author, String note, List<Transfer> transfers) {
    return new Entry(id, kind, date, author, note, transfers, Optional.empty());
  }

  /** The entry that takes another back, all of it. The original may itself be a reversal. */
  public static Entry reversing(Entry original, UUID id, LocalDate date, String author, String reason) {
    return new Entry(id, EntryKind.REVERSAL, date, author, reason, original.mirror(), Optional.of(original.id()));
  }

  /** The transfers that take this entry back. */
  List<Transfer> mirror() {
    return transfers.stream().map(Transfer::back).toList();
  }
}
