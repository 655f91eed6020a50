package hankbook.exchange;

import hankbook.measure.Unreadable;
import hankbook.plan.Run;
import hankbook.plan.Succession;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/** The order of a draft's threads as a weaver would write it. */
public final class WeaveOrder {
  /** As many as the finest warp has; to find what repeats in them takes the square of it. */
  private static final int MOST_GROUPS = 20_000;

  private WeaveOrder() {}

  /**
   * The written order of threads; empty where there are none, or it would be too long to be read.
   *
   * @param mark of each colour; colours of one mark are one
   */
  public static Optional<Succession> of(WeaveThreads threads, Function<WeaveColour, String> mark) {
    List<Run> runs = runs(threads, mark);
    if (runs.isEmpty() || runs.size() > MOST_GROUPS) {
      return Optional.empty();
    }
    Succession written = Succession.of(runs);
    try {
      return Optional.of(Succession.parse(written.toString()));
    } catch (Unreadable tooLong) {
      return Optional.empty();
    }
  }

  private static List<Run> runs(WeaveThreads threads, Function<WeaveColour, String> mark) {
    List<Run> runs = new ArrayList<>();
    for (WeaveColour colour : threads.colours()) {
      String name = mark.apply(colour);
      boolean same = !runs.isEmpty() && runs.getLast().mark().equals(name);
      runs.add(new Run(same ? runs.removeLast().count() + 1 : 1, name));
    }
    return runs;
  }
}
