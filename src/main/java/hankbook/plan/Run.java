package hankbook.plan;

import hankbook.measure.Phrase;
import hankbook.measure.Unreadable;
import hankbook.yarn.OneLine;
import java.util.Map;
import java.util.function.Predicate;
import java.util.regex.Pattern;

/**
 * Threads of one mark beside each other.
 *
 * @param count how many, at least 1
 * @param mark the short name of their yarn in the order, not blank
 */
public record Run(long count, String mark) implements SuccessionPart {
  /** What can stand without quotes: it starts with no digit or sign, holds none of the order's signs, and is none of its words. */
  private static final Pattern PLAIN = Pattern.compile("(?![\\d.+/*×-]|(?:x|times|and back|mirror|there and back)(?![\\p{L}\\d]))[^,()\"]+", Pattern.CASE_INSENSITIVE);

  public Run {
    mark = OneLine.of(mark);
    if (count < 1 || count > Succession.MOST) {
      throw new Unreadable(Long.toString(count), Phrase.of("a count from 1 to {0}", Succession.MOST));
    }
    if (mark.isEmpty()) {
      throw new Unreadable("", "a mark, the short name of a yarn in the order");
    }
  }

  @Override
  public long threads() {
    return count;
  }

  @Override
  public String at(long index) {
    return mark;
  }

  @Override
  public boolean show(boolean backwards, Predicate<Run> more) {
    return more.test(this);
  }

  @Override
  public Run last() {
    return this;
  }

  @Override
  public Run first() {
    return this;
  }

  @Override
  public void tally(long first, long factor, Map<String, Long> counts) {
    if (first > 0 && factor != 0) {
      counts.merge(mark, Math.multiplyExact(first, factor), Math::addExact);
    }
  }

  @Override
  public String words() {
    return count + " " + mark;
  }

  /** The form an order reads back. */
  @Override
  public String toString() {
    return count + " " + (PLAIN.matcher(mark).matches() ? mark : '"' + mark.replace("\"", "\"\"") + '"');
  }
}
