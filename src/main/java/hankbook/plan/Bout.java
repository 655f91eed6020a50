package hankbook.plan;

import hankbook.measure.Phrase;
import hankbook.measure.Unreadable;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;

/**
 * A part of the warp that is taken off the pegs by itself, as one chain.
 *
 * @param firstPass counted from 1 over the whole warp
 * @param lastPass the last of it
 * @param ends all of it
 */
public record Bout(int firstPass, int lastPass, int ends) {
  /** The most ends of a bout where nothing else is said; common practice. */
  public static final int USUAL = 120;

  private static final int MOST_BOUTS = 500;

  /**
   * Divides a warp into the fewest bouts of at most so many ends, of as nearly the same number of ends as can be (the least sum of squares). A
   * bout holds whole passes there and back, so that it ends at the peg where it began; only the last may hold one pass more.
   *
   * @param most ends of a bout
   * @throws Unreadable if a pass there and back does not fit into a bout, or there would be over 500 bouts
   */
  public static List<Bout> of(List<Pass> passes, int most) {
    int[] pairs = pairs(passes);
    int widest = Arrays.stream(pairs).max().orElse(0);
    if (widest > most) {
      throw new Unreadable(Integer.toString(most), Phrase.of("a bout of at least {0} ends, which one pass there and back lays", widest));
    }
    EvenCuts cuts = new EvenCuts(pairs, most);
    if (cuts.fewest() > MOST_BOUTS) {
      throw new Unreadable(Integer.toString(most), Phrase.of("a bout of more ends, so that there are at most {0} bouts", MOST_BOUTS));
    }
    List<Bout> bouts = new ArrayList<>();
    int first = 0;
    for (int end : cuts.ends()) {
      int last = Math.min(2 * end, passes.size());
      bouts.add(new Bout(2 * first + 1, last, Arrays.stream(pairs, first, end).sum()));
      first = end;
    }
    return Collections.unmodifiableList(bouts);
  }

  private static int[] pairs(List<Pass> passes) {
    int[] pairs = new int[Math.ceilDiv(passes.size(), 2)];
    for (int i = 0; i < passes.size(); i++) {
      pairs[i / 2] += passes.get(i).ends();
    }
    return pairs;
  }
}
