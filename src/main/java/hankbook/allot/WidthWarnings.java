package hankbook.allot;

import hankbook.measure.Phrase;
import hankbook.plan.Need;
import hankbook.plan.Plan;
import hankbook.plan.Yardage;
import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;

/** Says where ends that were rounded up to whole units stand wider in the reed than the plan reckons its weft for. */
final class WidthWarnings {
  /** What is over a hundredth is said. */
  private static final BigFraction SMALL = BigFraction.of(1, 100);

  private WidthWarnings() {}

  static Optional<Warning> of(Plan plan, Yardage yardage) {
    BigFraction planned = yardage.width().inReedTenths();
    BigFraction beyond = yardage.width().beyond(plan.warp());
    boolean rounded = plan.warp().ends().isEmpty() && plan.warp().endsMultiple() > 1;
    if (!rounded || beyond.compareTo(planned.multiply(SMALL)) <= 0) {
      return Optional.empty();
    }
    return yardage.needs().stream()
        .filter(need -> need.role() == Need.Role.WARP)
        .findFirst()
        .map(need -> new Warning(Warning.Code.WIDER_IN_REED, need.yarn(), Phrase.of(
            "{0}: {1} ends at {2} take {3} in the reed, {4} more than planned: the weft would be {5} more. Give the ends outright to reckon on it.",
            need.yarn(), yardage.width().ends(), plan.warp().sett(), Phrase.width(planned.add(beyond)), Phrase.width(beyond), new Phrase.Percent(beyond.divide(planned), 1))));
  }
}
