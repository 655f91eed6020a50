package hankbook.plan;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;

/** Cuts a row of counts into the fewest parts of at most a limit whose sums are as even as can be: an exact dynamic programme. */
final class EvenCuts {
  private final int[] counts;
  private final int most;

  EvenCuts(int[] counts, int most) {
    this.counts = counts.clone();
    this.most = most;
  }

  /** Where each part ends: the index behind its last count. */
  List<Integer> ends() {
    int parts = fewest();
    long[][] least = new long[parts + 1][counts.length + 1];
    int[][] from = new int[parts + 1][counts.length + 1];
    Arrays.stream(least).forEach(row -> Arrays.fill(row, Long.MAX_VALUE));
    least[0][0] = 0;
    for (int part = 1; part <= parts; part++) {
      for (int end = 1; end <= counts.length; end++) {
        settle(least[part - 1], least[part], from[part], end);
      }
    }
    List<Integer> ends = new ArrayList<>();
    for (int part = parts, end = counts.length; part > 0; end = from[part][end], part--) {
      ends.add(end);
    }
    Collections.reverse(ends);
    return ends;
  }

  private void settle(long[] before, long[] now, int[] from, int end) {
    long sum = 0;
    for (int start = end - 1; start >= 0 && sum + counts[start] <= most; start--) {
      sum += counts[start];
      if (before[start] != Long.MAX_VALUE && before[start] + sum * sum < now[end]) {
        now[end] = before[start] + sum * sum;
        from[end] = start;
      }
    }
  }

  /** How many parts there are at the least. */
  int fewest() {
    int parts = counts.length == 0 ? 0 : 1;
    long sum = 0;
    for (int count : counts) {
      if (sum + count > most) {
        parts++;
        sum = 0;
      }
      sum += count;
    }
    return parts;
  }
}
