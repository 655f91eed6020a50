package hankbook.allot;

import hankbook.measure.Exact;
import hankbook.measure.Length;
import hankbook.measure.LengthUnit;
import hankbook.plan.Need;
import hankbook.plan.Plan;
import hankbook.plan.Yardage;
import java.math.RoundingMode;
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
    String text =
        yardage.width().ends() + " ends at " + plan.warp().sett() + " take " + centimetres(planned.add(beyond)) + " in the reed, " + centimetres(beyond)
            + " more than planned: the weft would be " + Exact.plain(beyond.divide(planned).multiply(100), 1) + " % more. Give the ends outright to reckon on it.";
    return yardage.needs().stream()
        .filter(need -> need.role() == Need.Role.WARP)
        .findFirst()
        .map(need -> new Warning(Warning.Code.WIDER_IN_REED, need.yarn(), need.yarn() + ": " + text));
  }

  private static String centimetres(BigFraction tenths) {
    return Length.ofTenths(tenths, RoundingMode.HALF_UP).print(LengthUnit.CENTIMETRE, 1);
  }
}
