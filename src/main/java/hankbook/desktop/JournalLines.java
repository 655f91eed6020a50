package hankbook.desktop;

import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import java.util.function.LongFunction;
import java.util.stream.LongStream;
import javafx.collections.ObservableListBase;
import org.jspecify.annotations.Nullable;

/** The lines that the journal shows, the newest first, of which only those that are looked at are made. */
final class JournalLines extends ObservableListBase<JournalLine> {
  private final LongFunction<JournalLine> line;
  private long[] numbers = {};
  private long last;
  private boolean all;

  private JournalLines(LongFunction<JournalLine> line) {
    this.line = line;
  }

  /** Every entry up to a number. */
  static JournalLines all(long last, LongFunction<JournalLine> line) {
    JournalLines lines = new JournalLines(line);
    lines.all = true;
    lines.last = last;
    return lines;
  }

  /** Entries that are found one after the other. */
  static JournalLines found(LongFunction<JournalLine> line) {
    return new JournalLines(line);
  }

  /** There are more entries now. */
  void growTo(long newest) {
    int more = Math.toIntExact(newest - last);
    if (more > 0) {
      beginChange();
      last = newest;
      nextAdd(0, more);
      endChange();
    }
  }

  /** More were found; those that are not older than all before are left out. */
  void append(List<Long> more) {
    int before = numbers.length;
    long[] older = more.stream().mapToLong(Long::longValue).filter(number -> before == 0 || number < numbers[before - 1]).toArray();
    beginChange();
    numbers = LongStream.concat(Arrays.stream(numbers), Arrays.stream(older)).toArray();
    nextAdd(before, numbers.length);
    endChange();
  }

  /** More were found; those that are not newer than all before are left out. */
  void prepend(List<Long> more) {
    long[] newer = more.stream().mapToLong(Long::longValue).filter(number -> numbers.length == 0 || number > numbers[0]).toArray();
    beginChange();
    numbers = LongStream.concat(Arrays.stream(newer), Arrays.stream(numbers)).toArray();
    nextAdd(0, newer.length);
    endChange();
  }

  /** The number of the entry at a place. */
  long number(int place) {
    Objects.checkIndex(place, size());
    return all ? last - place : numbers[place];
  }

  /** Where the entry with a number stands; under zero where it does not. */
  int place(long number) {
    if (all) {
      return number < 1 || number > last ? -1 : Math.toIntExact(last - number);
    }
    int low = 0;
    int high = numbers.length - 1;
    while (low <= high) {
      int middle = (low + high) >>> 1;
      if (numbers[middle] == number) {
        return middle;
      }
      if (numbers[middle] > number) {
        low = middle + 1;
      } else {
        high = middle - 1;
      }
    }
    return -1;
  }

  @Override
  public JournalLine get(int place) {
    return line.apply(number(place));
  }

  @Override
  public int size() {
    return all ? Math.toIntExact(last) : numbers.length;
  }

  @Override
  public int indexOf(@Nullable Object other) {
    return other instanceof JournalLine asked ? place(asked.number()) : -1;
  }

  @Override
  public boolean contains(@Nullable Object other) {
    return indexOf(other) >= 0;
  }
}
