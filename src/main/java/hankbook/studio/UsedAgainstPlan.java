package hankbook.studio;

import hankbook.measure.Length;
import hankbook.yarn.YarnColour;

/**
 * What was used of a yarn, against what the plan took it to need.
 *
 * @param yarn the yarn and its colour
 * @param planned by the plan as it was reserved; zero where it does not name the yarn
 * @param used really
 * @param unexplained of the difference; negative where less was used than can be explained
 * @param mayStay how much of it may stay unexplained without a reason
 */
public record UsedAgainstPlan(YarnColour yarn, Length planned, Length used, Length unexplained, Length mayStay) {
  /** Whether a reason is asked for. */
  public boolean wantsReason() {
    return Length.max(unexplained, unexplained.negated()).compareTo(mayStay) > 0;
  }
}
