package hankbook.plan;

import java.util.Map;
import java.util.function.Predicate;

/** One part of a written order. */
public sealed interface SuccessionPart permits Run, Repeat, Mirror {
  /** How many threads it has, at least 1. */
  long threads();

  /** The mark of one thread, counted from 0. */
  String at(long index);

  /**
   * Shows the groups as they follow, or from the last to the first, until somebody has seen enough.
   *
   * @param more told each group; whether more are wanted
   * @return whether more are wanted after the last
   */
  boolean show(boolean backwards, Predicate<Run> more);

  /** The last group as it is written. */
  Run last();

  /** The first group as it is written. */
  Run first();

  /** Adds the first so many of its threads, at most all, to the counts, each as often as the factor says. */
  void tally(long first, long factor, Map<String, Long> counts);

  /** The part in words. */
  String words();
}
