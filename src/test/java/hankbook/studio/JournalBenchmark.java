package hankbook.studio;

import hankbook.store.LedgerAddress;
import hankbook.store.LedgerUnavailable;
import java.lang.management.ManagementFactory;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.concurrent.atomic.AtomicLong;
import java.util.stream.LongStream;

/** How long the journal of a long ledger takes; run by hand on a ledger that {@link LongLedger} made, whose address is given. */
final class JournalBenchmark {
  private static final int ROUNDS = 3;

  private JournalBenchmark() {}

  public static void main(String[] arguments) throws Exception {
    try (Studio studio = Studio.open(LedgerAddress.parse(arguments[0]), "Ada")) {
      Journal journal = new Journal(studio);
      long last = journal.last();
      time("open: the newest 200", () -> journal.numbered(page(last)).size());
      time("scroll to the end: the oldest 200", () -> journal.numbered(page(200)).size());
      time("what is new: none", journal::last);
      long before = memory();
      JournalSearch search = new JournalSearch(studio, entry -> entry.transfers().toString());
      for (String words : List.of("fair", "s00001", "1996-03", "reserve", "coral harbour plan", "nothing of the kind", "f", "fa", "fai")) {
        time("search: " + words, () -> found(search, words));
      }
      System.out.printf("kept for the search: %d MB%n", (memory() - before) / 1_000_000);
      found(search, "fair");
      time("as before: every entry", () -> journal.newestFirst().size());
    }
  }

  private static String found(JournalSearch search, String words) {
    AtomicLong hits = new AtomicLong();
    AtomicLong first = new AtomicLong();
    long began = System.nanoTime();
    search.find(words, 0, () -> false, found -> {
      first.compareAndSet(0, System.nanoTime() - began);
      hits.addAndGet(found.size());
    });
    return hits.get() + " hits, the first after " + first.get() / 1_000_000 + " ms";
  }

  private static List<Long> page(long last) {
    return LongStream.rangeClosed(last - 199, last).boxed().toList();
  }

  private static long memory() {
    System.gc();
    return Runtime.getRuntime().totalMemory() - Runtime.getRuntime().freeMemory();
  }

  private static void time(String what, Callable<?> work) throws Exception {
    for (int round = 0; round < ROUNDS; round++) {
      long began = System.nanoTime();
      long before = ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
      Object answer = work.call();
      long busy = ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime() - before;
      System.out.printf("%-40s %6d ms, of which %5d on the processor  %s%n", what, (System.nanoTime() - began) / 1_000_000, busy / 1_000_000, answer);
    }
  }
}
