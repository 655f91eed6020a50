package hankbook.studio;

import hankbook.measure.Length;
import hankbook.measure.Percentage;
import hankbook.reckon.Cause;
import hankbook.reckon.Reckoning;
import hankbook.reckon.YarnAccount;
import java.math.RoundingMode;
import java.util.List;

/** What of the yarn that was used cannot be explained. */
final class Unexplained {
  private Unexplained() {}

  /**
   * Yarn by yarn, in the order in which it is reckoned where they went.
   *
   * @param mayStay the part of what was used that may stay unexplained without a reason
   */
  static List<UsedAgainstPlan> of(Reckoning reckoning, Percentage mayStay) {
    return reckoning.yarns().stream().map(yarn -> of(yarn, mayStay)).toList();
  }

  private static UsedAgainstPlan of(YarnAccount yarn, Percentage mayStay) {
    Length limit = Length.ofTenths(yarn.used().exactTenths().multiply(mayStay.fraction()), RoundingMode.HALF_UP);
    return new UsedAgainstPlan(yarn.yarn(), yarn.planned(), yarn.used(), yarn.part(Cause.UNEXPLAINED), limit);
  }
}
