package hankbook.allot;

import hankbook.measure.Length;
import hankbook.measure.Unreadable;

/**
 * What a plan asks of one yarn in one colour.
 *
 * @param ends whole unbroken ends, at least 0
 * @param perEnd yarn in each
 * @param weft metres of weft
 * @param usefulRemnant what is left of a skein serves as weft only where it is longer than this
 */
public record Demand(int ends, Length perEnd, Length weft, Length usefulRemnant) {
  public Demand {
    if (ends < 0 || (ends > 0 && !perEnd.isPositive())) {
      throw new Unreadable(ends + " ends of " + perEnd, "ends of at least 0, each longer than zero");
    }
    if (weft.isNegative()) {
      throw new Unreadable(weft.toString(), "a length of weft of at least zero");
    }
  }

  /** How many ends a length gives. */
  int endsIn(Length free) {
    return ends == 0 ? 0 : (int) Math.min(ends, free.holds(perEnd));
  }
}
