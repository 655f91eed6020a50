package hankbook.gear;

import hankbook.measure.Unreadable;
import java.util.Arrays;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * How ends are drawn through a reed: so many in each dent, over and over.
 *
 * @param ends in each dent of one repeat; 1 to 20 dents of 1 to 20 ends
 */
public record Sley(List<Integer> ends) {
  private static final int MOST = 20;
  private static final Pattern FORM = Pattern.compile("\\d{1,3}(?:-\\d{1,3})*");
  private static final String WANTED = "ends in each dent such as 2 or 2-2-1, 1 to " + MOST + " of them";

  public Sley {
    ends = List.copyOf(ends);
    if (ends.isEmpty() || ends.size() > MOST || ends.stream().anyMatch(end -> end < 1 || end > MOST)) {
      throw new Unreadable(written(ends), WANTED);
    }
  }

  /**
   * Reads {@code 2} or {@code 2-2-1}.
   *
   * @throws Unreadable if it is neither
   */
  public static Sley parse(String text) {
    String dense = text.replaceAll("\\s", "");
    if (!FORM.matcher(dense).matches()) {
      throw new Unreadable(text, WANTED);
    }
    return new Sley(Arrays.stream(dense.split("-")).map(Integer::valueOf).toList());
  }

  /**
   * So many ends spread over so many dents as evenly as they go, the commoner number first: 5 over 3 are 2-2-1, 4 over 3 are 1-1-2.
   *
   * @throws Unreadable if there are fewer ends than dents
   */
  public static Sley spread(int ends, int dents) {
    int fuller = ends % dents;
    int rarer = Math.min(fuller, dents - fuller);
    int few = ends / dents;
    boolean fullerIsRarer = fuller <= dents - fuller;
    Integer[] spread = new Integer[dents];
    for (int i = 0; i < dents; i++) {
      boolean rare = (i + 1) * rarer / dents > i * rarer / dents;
      spread[i] = few + (rare == fullerIsRarer && fuller > 0 ? 1 : 0);
    }
    return new Sley(List.of(spread));
  }

  /** The dents of one repeat. */
  public int dents() {
    return ends.size();
  }

  /** The ends of one repeat. */
  public int endsInRepeat() {
    return ends.stream().mapToInt(Integer::intValue).sum();
  }

  /** The most ends in one dent. */
  public int fullest() {
    return ends.stream().mapToInt(Integer::intValue).max().orElseThrow();
  }

  /** Ends to a dent, on the whole. */
  public BigFraction perDent() {
    return BigFraction.of(endsInRepeat(), dents());
  }

  /** The fewest dents, from the start of a repeat, that take so many ends. */
  public int dentsFor(int count) {
    int dents = count / endsInRepeat() * dents();
    int left = count % endsInRepeat();
    for (int i = 0; left > 0; i++) {
      left -= ends.get(i);
      dents++;
    }
    return dents;
  }

  private static String written(List<Integer> ends) {
    return ends.stream().map(String::valueOf).collect(Collectors.joining("-"));
  }

  /** The form {@link #parse} reads back. */
  @Override
  public String toString() {
    return written(ends);
  }
}
