package hankbook.allot;

import hankbook.measure.Length;
import hankbook.measure.Unreadable;

/**
 * Ends of one yarn that are alike.
 *
 * @param ends whole unbroken ends, at least 0
 * @param each yarn in one; a doubled end is a longer one
 * @param oneLot whether all of them must come from one dye lot
 */
public record EndKind(int ends, Length each, boolean oneLot) {
  public EndKind {
    if (ends < 0 || (ends > 0 && !each.isPositive())) {
      throw new Unreadable(ends + " ends of " + each, "ends of at least 0, each longer than zero");
    }
  }
}
