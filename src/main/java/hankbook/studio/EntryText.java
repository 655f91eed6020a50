package hankbook.studio;

import hankbook.ledger.ChainedEntry;
import hankbook.ledger.Entry;
import hankbook.ledger.EntryKind;
import hankbook.ledger.Transfer;
import java.util.LinkedHashSet;
import java.util.Locale;
import java.util.Set;
import java.util.function.Function;
import java.util.function.UnaryOperator;

/**
 * What an entry is searched by.
 *
 * @param number and date, each after a line break
 * @param words the rest, in small letters
 */
record EntryText(String number, String words) {
  static EntryText of(ChainedEntry chained, Function<EntryKind, String> kinds, UnaryOperator<String> skein) {
    Entry entry = chained.entry();
    Set<String> parts = new LinkedHashSet<>();
    parts.add(kinds.apply(entry.kind()));
    parts.add(entry.kind().words());
    for (Transfer transfer : entry.transfers()) {
      parts.add(skein.apply(transfer.skein()));
      parts.add(transfer.from().kind().name());
      parts.add(transfer.to().kind().name());
      parts.add(transfer.from().planName());
      parts.add(transfer.to().planName());
    }
    parts.add(entry.author());
    parts.add(entry.note());
    parts.remove("");
    return new EntryText("\n" + chained.number() + "\n" + entry.date(), String.join("\n", parts).toLowerCase(Locale.ROOT));
  }
}
