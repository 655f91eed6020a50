package hankbook.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.LongStream;

/**
 * The ends of a warp from left to right, or the picks of a cloth from the first, without being written out.
 *
 * @param order their marks, repeated as often as it takes
 * @param threads what each mark looks like
 * @param count how many threads there are, at least 0
 */
public record Band(Succession order, Map<String, ClothThread> threads, long count) {
  public Band {
    threads = Map.copyOf(threads);
    if (!threads.keySet().containsAll(order.marks()) || count < 0) {
      throw new IllegalArgumentException("band of " + count + " threads marked " + order.marks() + " knows only " + threads.keySet());
    }
  }

  /**
   * Threads of one look beside each other.
   *
   * @param thread how each looks
   * @param count how many
   */
  public record Stripe(ClothThread thread, long count) {}

  /** How one thread looks, counted from 0. */
  public ClothThread at(long index) {
    if (index < 0 || index >= count) {
      throw new IndexOutOfBoundsException("thread " + index + " of " + count);
    }
    return thread(order.at(index % order.threads()));
  }

  /** The stripes from the first, up to as many as are wanted. */
  public List<Stripe> stripes(int limit) {
    return runs(limit).stream().map(run -> new Stripe(thread(run.mark()), run.count())).toList();
  }

  /** The runs of one mark from the first, up to as many as are wanted. */
  List<Run> runs(int limit) {
    List<Run> runs = new ArrayList<>();
    if (count > 0) {
      long left = count;
      Succession repeated = new Succession(List.of(new Repeat(Math.ceilDiv(count, order.threads()), order)));
      for (Run run : repeated.runs(limit)) {
        long seen = Math.min(left, run.count());
        if (seen > 0) {
          runs.add(new Run(seen, run.mark()));
        }
        left -= seen;
      }
    }
    return List.copyOf(runs);
  }

  /** Threads at even distances from the first to the last, for a picture with fewer points than threads; all where there are no more. */
  public List<ClothThread> sample(int points) {
    long taken = Math.min(points, count);
    return LongStream.range(0, taken).mapToObj(i -> at(i * count / taken)).toList();
  }

  private ClothThread thread(String mark) {
    ClothThread thread = threads.get(mark);
    if (thread == null) {
      throw new IllegalStateException("no thread is marked " + mark);
    }
    return thread;
  }
}
