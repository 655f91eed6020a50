package hankbook.allot;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;

/**
 * What the lots that are still open could give at the most, to turn back early from what leads nowhere. Every bound holds for itself
 * ({@link Bound}); of each, the lots that give most of it are added up, as many as may still be used.
 */
final class Outlook {
  private final Task task;
  private final Yields yields;
  private final Aim aim;
  private final List<Lot> lots;
  private final List<Bound> bounds;
  private final long waste;
  private final List<Map<Long, long[]>> known = new ArrayList<>();
  /** By the first lot that is open, by bound: the most that none, one, two and more of them give. */
  private final long[][][] most;

  Outlook(Task task, Yields yields, DyeLots shelf, Aim aim, List<Lot> lots) {
    this.task = task;
    this.yields = yields;
    this.aim = aim;
    this.lots = lots;
    bounds = Bound.all(yields, shelf, aim, lots);
    lots.forEach(lot -> known.add(new HashMap<>()));
    waste = aim.remnant() == 0 ? 0 : lots.stream().mapToLong(this::lost).max().orElse(0);
    most = new long[lots.size() + 1][][];
    long[][] largest = new long[bounds.size()][0];
    most[lots.size()] = sums(largest);
    for (int i = lots.size() - 1; i >= 0; i--) {
      long[] given = most(i, task.everything());
      for (int bound = 0; bound < largest.length; bound++) {
        largest[bound] = inserted(largest[bound], given[bound]);
      }
      most[i] = sums(largest);
    }
  }

  private long[] inserted(long[] largestFirst, long value) {
    int at = largestFirst.length;
    while (at > 0 && largestFirst[at - 1] < value) {
      at--;
    }
    long[] with = new long[largestFirst.length + 1];
    System.arraycopy(largestFirst, 0, with, 0, at);
    with[at] = value;
    System.arraycopy(largestFirst, at, with, at + 1, largestFirst.length - at);
    return with.length > aim.lots() ? Arrays.copyOf(with, aim.lots()) : with;
  }

  private static long[][] sums(long[][] values) {
    long[][] sums = new long[values.length][];
    for (int bound = 0; bound < values.length; bound++) {
      sums[bound] = new long[values[bound].length + 1];
      for (int i = 0; i < values[bound].length; i++) {
        sums[bound][i + 1] = sums[bound][i] + values[bound][i];
      }
    }
    return sums;
  }

  /** What of a skein no use can cover, at the most: a keeper may keep so much without giving less. */
  private long lost(Lot lot) {
    return lot.all().stream().mapToLong(skein -> skein.free().tenthsOfMillimetre() - leastFill(skein)).max().orElse(0);
  }

  private long leastFill(Candidate skein) {
    long[] given = yields.of(skein, task.everything());
    if (task.warpBits(true) == 0) {
      return given[yields.warp()];
    }
    return IntStream.range(0, task.kinds()).filter(kind -> task.ends(kind) > 0).mapToLong(kind -> given[kind] * task.each(kind)).min().orElse(0);
  }

  int bounds() {
    return bounds.size();
  }

  /** The most a lot can give in a role, bound by bound. */
  long[] most(int index, long role) {
    return known.get(index).computeIfAbsent(role, none -> bounds.stream().mapToLong(bound -> bound.of(lots.get(index), role, yields)).toArray());
  }

  /** Whether the lots from here on could still bring what was given up to what is wanted. */
  boolean hopeful(int index, int lotsLeft, long[] given, int used) {
    long warp = 0;
    long weft = 0;
    long all = 0;
    for (int i = 0; i < given.length; i++) {
      int measure = bounds.get(i).measure();
      long count = lotsFor(index, i, given[i] - (measure == yields.all() ? Math.max(0, aim.remnant() - waste) : 0));
      warp = measure < yields.weft() || measure == yields.warp() ? Math.max(warp, count) : warp;
      weft = measure == yields.weft() ? Math.max(weft, count) : weft;
      all = Math.max(all, count);
    }
    return warp + weft <= lotsLeft && all <= Math.min(lotsLeft, aim.touched() - used);
  }

  /** The fewest lots that could bring what is given up to what is wanted; {@link Aim#ANY} where they cannot. */
  private int lotsFor(int index, int bound, long given) {
    long[] sums = most[index][bound];
    for (int count = 0; count < sums.length; count++) {
      if (sums[count] + given >= bounds.get(bound).wanted()) {
        return count;
      }
    }
    return Aim.ANY;
  }
}
