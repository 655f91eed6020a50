package hankbook.allot;

import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;

/** What the lots that are still open could give at the most, to turn back early from what leads nowhere. */
final class Outlook {
  private final Task task;
  private final Measures measures;
  private final Aim aim;
  private final List<Lot> lots;
  private final long[] wanted;
  private final long waste;
  /** By the first lot that is open, by measure: the most that none, one, two and more of them give. */
  private final long[][][] most;

  Outlook(Task task, Measures measures, Aim aim, List<Lot> lots) {
    this.task = task;
    this.measures = measures;
    this.aim = aim;
    this.lots = lots;
    wanted = Search.wanted(measures, aim);
    most = new long[lots.size() + 1][][];
    long[][] given = new long[lots.size()][];
    for (int i = 0; i < lots.size(); i++) {
      given[i] = most(i, task.everything());
    }
    long lost = 0;
    long[][] largest = new long[measures.count()][0];
    most[lots.size()] = sums(largest);
    for (int i = lots.size() - 1; i >= 0; i--) {
      for (int measure = 0; measure < largest.length; measure++) {
        largest[measure] = inserted(largest[measure], given[i][measure]);
      }
      most[i] = sums(largest);
    }
    for (Lot lot : lots) {
      lost = Math.max(lost, lost(lot));
    }
    waste = lost;
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
    for (int measure = 0; measure < values.length; measure++) {
      sums[measure] = new long[values[measure].length + 1];
      for (int i = 0; i < values[measure].length; i++) {
        sums[measure][i + 1] = sums[measure][i] + values[measure][i];
      }
    }
    return sums;
  }

  /** What of a skein no use can cover, at the most: a keeper may keep so much without giving less. */
  private long lost(Lot lot) {
    long lost = 0;
    for (List<Candidate> skeins : List.of(lot.must(), lot.opened(), lot.unopened())) {
      for (Candidate skein : skeins) {
        lost = Math.max(lost, skein.free().tenthsOfMillimetre() - leastFill(skein));
      }
    }
    return lost;
  }

  private long leastFill(Candidate skein) {
    long[] most = measures.of(skein, task.everything());
    if (task.warpBits(true) == 0) {
      return most[measures.warp()];
    }
    return IntStream.range(0, task.kinds()).filter(kind -> task.ends(kind) > 0).mapToLong(kind -> most[kind] * task.each(kind)).min().orElse(0);
  }

  /** The most a lot can give in a role. */
  long[] most(int index, long role) {
    long[] sum = new long[measures.count()];
    if (role != 0) {
      Lot lot = lots.get(index);
      lot.must().forEach(skein -> Measures.add(sum, measures.of(skein, role)));
      lot.opened().forEach(skein -> Measures.add(sum, measures.of(skein, role)));
      lot.unopened().forEach(skein -> Measures.add(sum, measures.of(skein, role)));
    }
    return sum;
  }

  /** Whether the lots from here on could still bring what was given up to what is wanted. */
  boolean hopeful(int index, int lotsLeft, long[] given, int used) {
    int warp = 0;
    for (int kind = 0; kind < task.kinds(); kind++) {
      warp = Math.max(warp, lotsFor(index, kind, given));
    }
    warp = Math.max(warp, lotsFor(index, measures.warp(), given));
    int weft = lotsFor(index, measures.weft(), given);
    int all = lotsFor(index, measures.all(), given);
    boolean possible = warp < Aim.ANY && weft < Aim.ANY && all < Aim.ANY;
    return possible && warp + weft <= lotsLeft && Math.max(all, Math.max(warp, weft)) <= Math.min(lotsLeft, aim.touched() - used);
  }

  /** The fewest lots that could bring a measure up to what is wanted; {@link Aim#ANY} where they cannot. */
  private int lotsFor(int index, int measure, long[] given) {
    long kept = measure == measures.all() ? Math.max(0, aim.remnant() - waste) : 0;
    long lacks = wanted[measure] + kept - given[measure];
    long[] sums = most[index][measure];
    for (int count = 0; count < sums.length; count++) {
      if (sums[count] >= lacks) {
        return count;
      }
    }
    return Aim.ANY;
  }
}
