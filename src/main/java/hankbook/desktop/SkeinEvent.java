package hankbook.desktop;

import hankbook.desktop.say.Say;
import hankbook.ledger.Entry;
import hankbook.ledger.EntryKind;
import hankbook.ledger.Transfer;
import hankbook.studio.JournalEntry;
import java.util.stream.Collectors;

/**
 * One thing that happened to a skein, in words.
 *
 * @param kind of entry
 * @param date when
 * @param what happened
 * @param detail how much went from where to where
 * @param note of whoever wrote it down
 * @param takenBack whether it was taken back since
 */
record SkeinEvent(EntryKind kind, String date, String what, String detail, String note, boolean takenBack) {
  static SkeinEvent of(JournalEntry journal, String code) {
    Entry entry = journal.chained().entry();
    String detail = entry.transfers().stream()
        .filter(transfer -> transfer.skein().equals(code))
        .map(SkeinEvent::words)
        .collect(Collectors.joining("\n"));
    return new SkeinEvent(entry.kind(), entry.date().toString(), Wording.happened(entry.kind()), detail, entry.note(), journal.reversedBy().isPresent());
  }

  /** Whether it still tells how much of the skein there is. */
  boolean isStandingRecount() {
    return kind == EntryKind.RECOUNT && !takenBack;
  }

  private static String words(Transfer transfer) {
    return Say.text("{0}: {1}", Wording.metres(transfer.length()), Wording.way(transfer));
  }
}
