package hankbook.desktop;

import hankbook.desktop.say.Say;
import hankbook.ledger.Entry;
import hankbook.ledger.Place;
import hankbook.ledger.Transfer;
import hankbook.measure.Length;
import hankbook.studio.NumberedEntry;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.Collectors;
import java.util.stream.Stream;

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
 * @param others the number of the entry that took it back, or of the one that it took back itself
 */
record JournalRow(
    Entry entry, long number, String date, String what, String yarn, String way, String by, String note, String state, boolean takenBack, Optional<Long> others) {
  static JournalRow of(NumberedEntry numbered) {
    Entry entry = numbered.chained().entry();
    Optional<String> back = numbered.takenBackBy().map(number -> Say.text("taken back by {0}", number));
    String state = back.or(() -> numbered.takesBack().map(number -> Say.text("takes back {0}", number))).orElse("");
    return new JournalRow(
        entry, numbered.chained().number(), entry.date().toString(), Wording.happened(entry.kind()), yarn(entry), way(entry), entry.author(), entry.note(), state,
        back.isPresent(), numbered.takenBackBy().or(numbered::takesBack));
  }

  /** What an entry is called and where its yarn went, to be searched by. */
  static String spoken(Entry entry) {
    return Wording.happened(entry.kind()) + "\n" + way(entry);
  }

  /** The skeins that it moves. */
  List<String> skeins() {
    return entry.transfers().stream().map(Transfer::skein).distinct().toList();
  }

  /** The plans that it speaks of. */
  List<String> plans() {
    return entry.transfers().stream()
        .flatMap(transfer -> Stream.of(transfer.from().planName(), transfer.to().planName()))
        .filter(plan -> !plan.isEmpty())
        .distinct()
        .toList();
  }

  UUID id() {
    return entry.id();
  }

  /** Each transfer on a line of its own. */
  List<String> lines() {
    return entry.transfers().stream().map(JournalRow::line).toList();
  }

  private static String line(Transfer transfer) {
    return Say.text("{0}: {1}, {2}", transfer.skein(), Wording.yarn(transfer.length()), Wording.way(transfer));
  }

  private static String yarn(Entry entry) {
    List<String> codes = entry.transfers().stream().map(Transfer::skein).distinct().toList();
    String of = codes.size() <= 2 ? String.join(", ", codes) : Say.count(codes.size(), "{0} skein", "{0} skeins");
    return Say.text("{0} of {1}", Wording.yarn(moved(entry)), of);
  }

  /** What is wound onto another skein leaves the one and comes onto the other, and moved once all the same. */
  private static Length moved(Entry entry) {
    List<Transfer> off = entry.transfers().stream().filter(transfer -> transfer.to().kind() == Place.Kind.REWOUND).toList();
    return (off.isEmpty() ? entry.transfers() : off).stream().map(Transfer::length).reduce(Length.ZERO, Length::plus);
  }

  private static String way(Entry entry) {
    return entry.transfers().stream()
        .map(Wording::way)
        .distinct()
        .collect(Collectors.joining("; "));
  }
}
