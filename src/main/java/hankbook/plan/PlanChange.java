package hankbook.plan;

import hankbook.measure.Length;
import hankbook.yarn.YarnColour;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;

/**
 * What another form of a plan changes; negative where it takes less.
 *
 * @param ends more ends
 * @param inReed wider in the reed
 * @param finished wider when finished
 * @param inProportion whether the order of the one does not account for the ends of the other, so that its groups keep their proportion
 * @param yarn metres more of each yarn, warp and weft together, those that stay the same too
 */
public record PlanChange(int ends, Length inReed, Length finished, boolean inProportion, Map<YarnColour, Length> yarn) {
  public PlanChange {
    yarn = Collections.unmodifiableMap(new LinkedHashMap<>(yarn));
  }

  /**
   * Reckons both forms.
   *
   * @throws hankbook.measure.Unreadable if one of them does not add up
   */
  public static PlanChange of(Plan before, Plan after) {
    Yardage was = Yardage.of(before);
    Yardage is = Yardage.of(after);
    Map<YarnColour, Length> yarn = new LinkedHashMap<>();
    was.needs().forEach(need -> yarn.merge(need.yarn(), need.length().negated(), Length::plus));
    is.needs().forEach(need -> yarn.merge(need.yarn(), need.length(), Length::plus));
    return new PlanChange(
        is.width().ends() - was.width().ends(),
        is.width().inReed().minus(was.width().inReed()),
        is.width().finished(after.allowances()).minus(was.width().finished(before.allowances())),
        !after.warp().order().equals(before.warp().order()),
        yarn);
  }
}
