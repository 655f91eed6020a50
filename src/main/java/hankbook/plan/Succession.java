package hankbook.plan;

import hankbook.measure.Phrase;
import hankbook.measure.Unreadable;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.SequencedMap;
import java.util.Set;
import java.util.function.Predicate;

/**
 * The order of ends or picks as a weaver writes it, {@code 12 x (6 Chalk, 2 Woad), 6 Chalk}: from left to right, or from the first pick
 * to the last. It is kept as it was written and counted by arithmetic, so that a million repeats take no more room than one.
 *
 * @param parts what comes one after the other, at least one
 */
public record Succession(List<SuccessionPart> parts) {
  /** The most threads an order may have. */
  public static final long MOST = 1_000_000_000_000L;

  public Succession {
    parts = List.copyOf(parts);
    if (parts.isEmpty()) {
      throw new Unreadable("", SuccessionReader.WANTED);
    }
    counted(parts);
  }

  private static void counted(List<SuccessionPart> parts) {
    long threads = 0;
    for (SuccessionPart part : parts) {
      threads += part.threads();
      if (threads > MOST) {
        throw new Unreadable("more", Phrase.of("an order of at most {0} threads", MOST));
      }
    }
  }

  /**
   * Reads an order: counts and marks with commas between them, {@code 6 Chalk, 2 Woad}; a mark alone counts once; a mark that starts with
   * a digit stands in double quotes. {@code 12 x (…)} or {@code (…) x 12} comes twelve times. {@code mirror (…)} comes as written and then
   * backwards, so that the thread in the middle is doubled; {@code there and back (…)} or {@code (…) and back} turns on the last group,
   * which comes once.
   *
   * @throws Unreadable saying near what it cannot be read and what is wanted there
   */
  public static Succession parse(String text) {
    return SuccessionReader.read(text);
  }

  /**
   * A short written form of these groups, which gives them again in this order.
   *
   * @param runs the groups, at least one
   */
  public static Succession of(List<Run> runs) {
    return SuccessionFinder.find(runs);
  }

  /** How many threads it has, at least 1. */
  public long threads() {
    return parts.stream().mapToLong(SuccessionPart::threads).sum();
  }

  /** The marks in it, in the order in which they are first written. */
  public Set<String> marks() {
    return counts().sequencedKeySet();
  }

  /** How many threads each mark has, in the order in which they are first written. */
  public SequencedMap<String, Long> counts() {
    SequencedMap<String, Long> counts = new LinkedHashMap<>();
    tally(threads(), 1, counts);
    return Collections.unmodifiableSequencedMap(counts);
  }

  /**
   * How many of each mark come in so many threads, when the whole order is repeated as often as it takes and the rest is the first of
   * the next repeat.
   *
   * @param length how many threads, at least 0
   */
  public SequencedMap<String, Long> countsOver(long length) {
    SequencedMap<String, Long> counts = new LinkedHashMap<>();
    tally(threads(), length / threads(), counts);
    tally(length % threads(), 1, counts);
    return Collections.unmodifiableSequencedMap(counts);
  }

  /**
   * The mark of one thread.
   *
   * @param index counted from 0, under {@link #threads()}
   */
  public String at(long index) {
    long left = index;
    for (SuccessionPart part : parts) {
      if (left < part.threads()) {
        return part.at(left);
      }
      left -= part.threads();
    }
    throw new IndexOutOfBoundsException("thread " + index + " of " + threads());
  }

  /** The first groups of one mark, neighbours of the same mark joined; all of them where there are no more. */
  public List<Run> runs(int limit) {
    JoinedRuns joined = new JoinedRuns(limit);
    show(false, joined::add);
    return joined.runs();
  }

  /** Shows the groups as they follow, or from the last to the first, while more are wanted. */
  boolean show(boolean backwards, Predicate<Run> more) {
    for (SuccessionPart part : backwards ? parts.reversed() : parts) {
      if (!part.show(backwards, more)) {
        return false;
      }
    }
    return true;
  }

  /** The last group as it is written. */
  Run last() {
    return parts.getLast().last();
  }

  /** Adds the first so many threads to the counts, each as often as the factor says. */
  void tally(long first, long factor, Map<String, Long> counts) {
    long left = first;
    for (SuccessionPart part : parts) {
      long taken = Math.min(left, part.threads());
      part.tally(taken, factor, counts);
      left -= taken;
    }
  }

  /** The order in words: {@code 12 times: 6 Chalk, 2 Woad; then 6 Chalk}. */
  public String words() {
    StringBuilder words = new StringBuilder(parts.getFirst().words());
    for (int i = 1; i < parts.size(); i++) {
      boolean plain = parts.get(i - 1) instanceof Run && parts.get(i) instanceof Run;
      words.append(plain ? ", " : "; then ").append(parts.get(i).words());
    }
    return words.toString();
  }

  /** What each mark comes to, in words: {@code 102 ends, 78 Chalk and 24 Woad}. */
  public String sumInWords(String unit) {
    List<String> counts = new ArrayList<>();
    counts().forEach((mark, count) -> counts.add(count + " " + mark));
    String last = counts.removeLast();
    return threads() + " " + unit + ", " + (counts.isEmpty() ? "all " + last.substring(last.indexOf(' ') + 1) : String.join(", ", counts) + " and " + last);
  }

  /** The form {@link #parse} reads back. */
  @Override
  public String toString() {
    return String.join(", ", parts.stream().map(SuccessionPart::toString).toList());
  }

  /** How often its longest repeat comes, of those that are not themselves in another; 0 where it has none. */
  public long repeats() {
    int longest = longestRepeat();
    return longest < 0 ? 0 : ((Repeat) parts.get(longest)).times();
  }

  /**
   * The same order with its longest repeat so many times.
   *
   * @param times at least 1
   */
  Succession withRepeats(long times) {
    int longest = longestRepeat();
    List<SuccessionPart> changed = new ArrayList<>(parts);
    changed.set(longest, new Repeat(times, ((Repeat) parts.get(longest)).group()));
    return new Succession(changed);
  }

  private int longestRepeat() {
    int longest = -1;
    for (int i = 0; i < parts.size(); i++) {
      if (parts.get(i) instanceof Repeat && (longest < 0 || parts.get(i).threads() > parts.get(longest).threads())) {
        longest = i;
      }
    }
    return longest;
  }
}
