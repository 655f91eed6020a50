package hankbook.allot;

import java.util.OptionalLong;
import java.util.function.LongPredicate;

/**
 * Finds the largest count that does. What it finds does and one more does not, always; that no larger one does holds as far as more
 * never needs less, which is so but for the rounding to whole ends where a width is cut anew.
 */
final class Largest {
  private Largest() {}

  /** The largest count of at least 1, or 0 where 1 does not do: doubled until it fails, then halved in. */
  static long of(LongPredicate does) {
    long fails = 1;
    while (does.test(fails)) {
      fails = Math.multiplyExact(fails, 2);
    }
    return fails == 1 ? 0 : between(fails / 2, fails, does);
  }

  /** The largest count from the least on that lies under one which should fail; none where even the least fails, or that one does not. */
  static OptionalLong under(long fails, long least, LongPredicate does) {
    return least < fails && does.test(least) && !does.test(fails) ? OptionalLong.of(between(least, fails, does)) : OptionalLong.empty();
  }

  private static long between(long does, long fails, LongPredicate test) {
    long low = does;
    long high = fails;
    while (high - low > 1) {
      long middle = low + (high - low) / 2;
      if (test.test(middle)) {
        low = middle;
      } else {
        high = middle;
      }
    }
    return low;
  }
}
