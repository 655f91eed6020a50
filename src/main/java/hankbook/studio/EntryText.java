package hankbook.studio;

import hankbook.ledger.ChainedEntry;
import hankbook.ledger.Entry;
import java.util.LinkedHashSet;
import java.util.List;
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
  /**
   * @param spoken what the entry is called where one searches, and its places
   * @param skein code, yarn and colour of a skein, by its code
   */
  static EntryText of(ChainedEntry chained, Function<Entry, String> spoken, UnaryOperator<String> skein) {
    Entry entry = chained.entry();
    Set<String> parts = new LinkedHashSet<>(List.of(spoken.apply(entry), entry.kind().words()));
    entry.transfers().forEach(transfer -> parts.add(skein.apply(transfer.skein())));
    parts.add(entry.author());
    parts.add(entry.note());
    return new EntryText("\n" + chained.number() + "\n" + entry.date(), String.join("\n", parts).toLowerCase(Locale.ROOT));
  }
}
