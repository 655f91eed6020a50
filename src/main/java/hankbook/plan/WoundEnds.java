package hankbook.plan;

import hankbook.measure.Length;
import java.math.RoundingMode;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.Map;

/** Which kinds of ends a warp has. */
final class WoundEnds {
  private WoundEnds() {}

  /** How many ends of each kind the warp needs, repair ends included, in the order of the needs. */
  static Map<WoundEnd, Long> all(Yardage yardage) {
    Map<WoundEnd, Long> kinds = new LinkedHashMap<>();
    yardage.needs().stream()
        .filter(need -> need.role() == Need.Role.WARP)
        .forEach(need -> kinds.merge(new WoundEnd(need.yarn(), need.perThread()), need.threads(), Long::sum));
    return kinds;
  }

  /** The kind of each group of the order, by its mark in the {@link WarpBand}. */
  static Map<String, WoundEnd> byMark(Plan plan, Yardage yardage) {
    Map<String, WoundEnd> byMark = new HashMap<>();
    for (int i = 0; i < plan.warp().order().size(); i++) {
      OrderEntry entry = plan.warp().order().get(i);
      byMark.put(WarpBand.mark(plan.warp(), i), new WoundEnd(entry.yarn(), perEnd(plan, yardage, entry.strands())));
    }
    return byMark;
  }

  /** The kind of the selvedge ends where they are of their own; else that of the first group. */
  static WoundEnd selvedge(Plan plan, Yardage yardage) {
    OrderEntry first = plan.warp().order().getFirst();
    return plan.warp().selvedge()
        .map(selvedge -> new WoundEnd(selvedge.yarn(), perEnd(plan, yardage, selvedge.strands())))
        .orElseGet(() -> new WoundEnd(first.yarn(), perEnd(plan, yardage, first.strands())));
  }

  private static Length perEnd(Plan plan, Yardage yardage, int strands) {
    return Length.ofTenths(
        yardage.warp().total().exactTenths().multiply(plan.allowances().winding().growth()).multiply(strands), RoundingMode.CEILING);
  }
}
