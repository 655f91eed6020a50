package hankbook.plan;

import hankbook.measure.Length;
import hankbook.yarn.YarnColour;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;

/** Which need for the warp the ends of each group belong to. */
final class WoundEnds {
  private WoundEnds() {}

  /** The kinds of ends, each with its need, in the order of the needs. */
  static Map<WoundEnd, Need> all(Yardage yardage) {
    Map<WoundEnd, Need> kinds = new LinkedHashMap<>();
    Map<YarnColour, Integer> seen = new HashMap<>();
    for (Need need : yardage.needs()) {
      if (need.role() == Need.Role.WARP) {
        kinds.put(new WoundEnd(need.yarn(), need.perThread(), seen.merge(need.yarn(), 1, Integer::sum) - 1), need);
      }
    }
    return kinds;
  }

  /** The kind of each group of the order, by its mark in the {@link WarpBand}. */
  static Map<String, WoundEnd> byMark(Plan plan, Yardage yardage) {
    Map<WoundEnd, Need> kinds = all(yardage);
    List<WoundEnd> ofOneLot = new ArrayList<>(kinds.keySet().stream().filter(kind -> Objects.requireNonNull(kinds.get(kind)).oneLot()).toList());
    Map<String, WoundEnd> byMark = new HashMap<>();
    for (int i = 0; i < plan.warp().order().size(); i++) {
      OrderEntry entry = plan.warp().order().get(i);
      // Each stripe of one lot is a need of its own, in the order of the groups.
      byMark.put(WarpBand.mark(plan.warp(), i), entry.oneLot() ? ofOneLot.removeFirst() : shared(kinds, entry.yarn(), perEnd(plan, yardage, entry.strands())));
    }
    return byMark;
  }

  /** The kind of the selvedge ends where they are of their own; else of no group. */
  static WoundEnd selvedge(Plan plan, Yardage yardage) {
    return plan.warp().selvedge()
        .map(selvedge -> shared(all(yardage), selvedge.yarn(), perEnd(plan, yardage, selvedge.strands())))
        .orElseGet(() -> new WoundEnd(plan.warp().order().getFirst().yarn(), Length.ZERO, -1));
  }

  private static WoundEnd shared(Map<WoundEnd, Need> kinds, YarnColour yarn, Length perEnd) {
    return kinds.entrySet().stream()
        .filter(kind -> !kind.getValue().oneLot() && kind.getKey().yarn().equals(yarn) && kind.getKey().perEnd().equals(perEnd))
        .map(Map.Entry::getKey)
        .findFirst()
        .orElseThrow(() -> new IllegalStateException("no need of " + yarn + " for ends of " + perEnd + ", wanted one"));
  }

  private static Length perEnd(Plan plan, Yardage yardage, int strands) {
    return Length.ofTenths(
        yardage.warp().total().exactTenths().multiply(plan.allowances().winding().growth()).multiply(strands), RoundingMode.CEILING);
  }
}
