package hankbook.cost;

import hankbook.measure.Phrase;
import hankbook.measure.Unreadable;
import java.time.Duration;

/**
 * How long a kind of work takes for each end, pick or piece.
 *
 * @param each at least zero
 * @param from how that is known, in words, such as "common practice" or "mean of 5 plans"
 */
public record UnitTime(Duration each, Phrase from) {
  /** How a time is known that is neither learnt nor common practice. */
  public static final Phrase AS_SET = Phrase.of("as set");

  public UnitTime {
    if (each.isNegative()) {
      throw new Unreadable(each.toString(), "a time of at least zero");
    }
  }
}
