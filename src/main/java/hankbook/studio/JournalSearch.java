package hankbook.studio;

import hankbook.ledger.Entry;
import hankbook.store.RecordedEntry;
import hankbook.store.Session;
import hankbook.yarn.Skein;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.BooleanSupplier;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.function.LongPredicate;
import java.util.stream.Collectors;

/**
 * Finds entries by plain words. What entries are searched by is read once, the newest first and as far as is needed, and kept in about a hundred bytes for each;
 * after that only what is new is read. Safe to be used by several threads, one after the other.
 */
public final class JournalSearch {
  /** Read and told at once. */
  private static final int BLOCK = 4000;

  private final Studio studio;
  private final Function<Entry, String> spoken;
  private final List<List<EntryText>> blocks = new ArrayList<>();
  private final Map<String, String> skeins = new HashMap<>();

  /** @param spoken what an entry is called where one searches, its plans and its places */
  public JournalSearch(Studio studio, Function<Entry, String> spoken) {
    this.studio = studio;
    this.spoken = spoken;
  }

  /**
   * Finds the entries in which every word stands.
   *
   * @param words in any case, apart by blanks
   * @param above only entries with higher numbers are looked at; 0 for all
   * @param stale whether the answer is wanted no more, asked now and then
   * @param found is told the numbers bit by bit, the newest first
   */
  public synchronized void find(String words, long above, BooleanSupplier stale, Consumer<List<Long>> found) {
    SearchWords asked = SearchWords.of(words);
    long last = studio.read(session -> session.entries().end().entries());
    for (int block = Math.toIntExact((last - 1) / BLOCK); block >= above / BLOCK && last > above && !stale.getAsBoolean(); block--) {
      List<Long> hits = hits(block, upToDate(block, last), asked, number -> number > above && number <= last);
      if (!hits.isEmpty()) {
        found.accept(hits);
      }
    }
  }

  private static List<Long> hits(int block, List<EntryText> texts, SearchWords asked, LongPredicate wanted) {
    List<Long> hits = new ArrayList<>();
    for (int place = texts.size() - 1; place >= 0; place--) {
      long number = (long) block * BLOCK + place + 1;
      if (wanted.test(number) && asked.standIn(texts.get(place))) {
        hits.add(number);
      }
    }
    return hits;
  }

  private List<EntryText> upToDate(int block, long last) {
    while (blocks.size() <= block) {
      blocks.add(new ArrayList<>());
    }
    List<EntryText> texts = blocks.get(block);
    long first = (long) block * BLOCK + 1;
    long end = Math.min(last, first + BLOCK - 1);
    if (first + texts.size() <= end) {
      texts.addAll(studio.read(session -> read(session, first + texts.size(), end)));
    }
    return texts;
  }

  private List<EntryText> read(Session session, long first, long end) {
    List<RecordedEntry> entries = session.entries().between(first, end);
    if (entries.stream().flatMap(entry -> entry.entry().transfers().stream()).anyMatch(transfer -> !skeins.containsKey(transfer.skein()))) {
      skeins.putAll(session.skeins().all().stream().collect(Collectors.toMap(Skein::code, skein -> skein.code() + " " + skein.yarn())));
    }
    return entries.stream().map(entry -> EntryText.of(entry.chained(), spoken, code -> skeins.getOrDefault(code, code))).toList();
  }
}
