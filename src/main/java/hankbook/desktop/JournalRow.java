package hankbook.desktop;

import hankbook.ledger.Entry;
import hankbook.ledger.Transfer;
import hankbook.measure.Length;
import hankbook.studio.JournalEntry;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.Collectors;

/**
 * An entry as the journal shows it; every text is made once.
 *
 * @param entry what was written
 * @param number its number in the ledger
 * @param date when it happened
 * @param what happened
 * @param yarn how much of which skeins
 * @param way from where to where
 * @param by who wrote it
 * @param note of whoever wrote it
 * @param state which entry took it back, or which one it took back itself
 * @param takenBack whether it was taken back
 * @param searched the text it is searched by
 */
record JournalRow(
    Entry entry, long number, String date, String what, String yarn, String way, String by, String note, String state,
    boolean takenBack, String searched) {
  /**
   * @param takenBackBy the number of the entry that took it back
   * @param takesBack the number of the entry that it took back itself
   */
  static JournalRow of(JournalEntry journal, Optional<Long> takenBackBy, Optional<Long> takesBack) {
    Entry entry = journal.chained().entry();
    String what = Wording.happened(entry.kind());
    String state = takenBackBy.map(number -> "taken back by " + number).or(() -> takesBack.map(number -> "takes back " + number)).orElse("");
    String way = way(entry);
    String searched = PlainWords.of(
        Long.toString(journal.chained().number()), entry.date().toString(), what, way, entry.author(), entry.note(), state, codes(entry), entry.kind().words());
    return new JournalRow(
        entry, journal.chained().number(), entry.date().toString(), what, yarn(entry), way, entry.author(), entry.note(), state,
        takenBackBy.isPresent(), searched);
  }

  UUID id() {
    return entry.id();
  }

  /** Each transfer on a line of its own. */
  List<String> lines() {
    return entry.transfers().stream().map(JournalRow::line).toList();
  }

  private static String line(Transfer transfer) {
    return transfer.skein() + ": " + Wording.metres(transfer.length()) + " from " + transfer.from().words() + " to " + transfer.to().words();
  }

  private static String yarn(Entry entry) {
    List<String> codes = entry.transfers().stream().map(Transfer::skein).distinct().toList();
    String of = codes.size() <= 2 ? String.join(", ", codes) : Wording.count(codes.size(), "skein", "skeins");
    Length sum = entry.transfers().stream().map(Transfer::length).reduce(Length.ZERO, Length::plus);
    return Wording.metres(sum) + " of " + of;
  }

  private static String codes(Entry entry) {
    return entry.transfers().stream().map(Transfer::skein).distinct().collect(Collectors.joining(" "));
  }

  private static String way(Entry entry) {
    return entry.transfers().stream()
        .map(Wording::way)
        .distinct()
        .collect(Collectors.joining("; "));
  }
}
