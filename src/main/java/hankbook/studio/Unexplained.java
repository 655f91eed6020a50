package hankbook.studio;

import hankbook.measure.Length;
import hankbook.measure.Percentage;
import hankbook.plan.Need;
import hankbook.plan.Yardage;
import hankbook.reckon.Made;
import hankbook.yarn.YarnColour;
import java.math.RoundingMode;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** What of the yarn that was used cannot be explained. */
final class Unexplained {
  private Unexplained() {}

  /**
   * Yarn by yarn, in the order of what was used.
   *
   * @param mayStay the part of what was used that may stay unexplained without a reason
   */
  static List<UsedAgainstPlan> of(Made made, Percentage mayStay) {
    Map<YarnColour, Length> planned = planned(made);
    return made.used().stream()
        .map(used -> {
          Length expected = planned.getOrDefault(used.yarn(), Length.ZERO);
          Length limit = Length.ofTenths(used.used().exactTenths().multiply(mayStay.fraction()), RoundingMode.HALF_UP);
          return new UsedAgainstPlan(used.yarn(), expected, used.used(), used.used().minus(expected), limit);
        })
        .toList();
  }

  private static Map<YarnColour, Length> planned(Made made) {
    Map<YarnColour, Length> planned = new LinkedHashMap<>();
    for (Need need : Yardage.of(made.plan()).needs()) {
      planned.merge(need.yarn(), need.length(), Length::plus);
    }
    return planned;
  }
}
