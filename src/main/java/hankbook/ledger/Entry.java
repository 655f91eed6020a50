package hankbook.ledger;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.UUID;

/** One thing that was done, as it is written down for good. Its id is made before the first attempt, so that a repeat is known for one. */
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
    if (reverses.isPresent() != (kind == EntryKind.REVERSAL)) {
      throw Words.wrong("reverses", reverses.map(UUID::toString).orElse(""), "an original for a reversal and none for any other entry");
    }
    if (kind == EntryKind.REVERSAL && note.isBlank()) {
      throw Words.wrong("note", note, "the reason for the reversal");
    }
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
