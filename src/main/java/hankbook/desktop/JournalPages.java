package hankbook.desktop;

import hankbook.studio.Journal;
import hankbook.studio.Studio;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import java.util.stream.LongStream;

/** Reads the entries that are looked at, a page at a time, and forgets those that were not looked at for long. */
final class JournalPages {
  private static final int PAGE = 100;
  private static final int KEPT = 4000;

  private final Studio studio;
  private final Work work;
  private final Status status;
  private final Map<Long, JournalLine> lines = new LinkedHashMap<>(KEPT, 0.75f, true) {
    private static final long serialVersionUID = 1L;

    @Override
    protected boolean removeEldestEntry(Map.Entry<Long, JournalLine> eldest) {
      return size() > KEPT;
    }
  };
  private final TreeSet<Long> wanted = new TreeSet<>();

  JournalPages(Studio studio, Work work, Status status) {
    this.studio = studio;
    this.work = work;
    this.status = status;
  }

  /** The line of an entry; what it says is read where it was not yet. */
  JournalLine line(long number) {
    JournalLine there = lines.get(number);
    if (there != null) {
      return there;
    }
    JournalLine line = new JournalLine(number);
    lines.put(number, line);
    want(List.of(number));
    return line;
  }

  /** Reads a page of what stands one below the other, before each of it is asked for. */
  void readAhead(JournalLines shown, int from) {
    LongStream.range(from, Math.min(shown.size(), from + (long) PAGE)).forEach(place -> line(shown.number((int) place)));
  }

  /** Does not forget a line that is still looked at. */
  void keep(JournalLine line) {
    lines.put(line.number(), line);
  }

  /** Reads anew what some entries say, where they are kept. */
  void readAgain(Collection<Long> numbers) {
    want(numbers.stream().filter(lines::containsKey).toList());
  }

  /** Reads anew what is kept. */
  void readAllAgain() {
    want(List.copyOf(lines.keySet()));
  }

  /** What is asked for while a screen is laid out is read together. */
  private void want(Collection<Long> numbers) {
    boolean idle = wanted.isEmpty();
    wanted.addAll(numbers);
    if (idle && !wanted.isEmpty()) {
      work.here().execute(this::read);
    }
  }

  private void read() {
    List<Long> numbers = List.copyOf(wanted);
    wanted.clear();
    work.run(() -> new Journal(studio).numbered(numbers).stream().map(JournalRow::of).toList(), this::show, trouble -> notRead(numbers, trouble));
  }

  private void show(List<JournalRow> rows) {
    rows.forEach(row -> {
      JournalLine line = lines.get(row.number());
      if (line != null) {
        line.show(row);
      }
    });
  }

  private void notRead(List<Long> numbers, Exception trouble) {
    numbers.forEach(lines::remove);
    status.wrong(trouble);
  }
}
