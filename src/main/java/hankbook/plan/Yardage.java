package hankbook.plan;

import hankbook.measure.Exact;
import hankbook.measure.Length;
import hankbook.measure.Sett;
import hankbook.yarn.YarnColour;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * What a plan takes: its width and ends, its warp length in parts, and each yarn's need.
 *
 * @param width width in the reed and ends
 * @param warp the warp's length and parts
 * @param needs warp needs in the order's order, then weft needs
 */
public record Yardage(Width width, WarpLength warp, List<Need> needs) {
  public Yardage {
    needs = List.copyOf(needs);
  }

  /**
   * Reckons a plan.
   *
   * @throws hankbook.measure.Unreadable if the order does not account for every end, or shares do not sum to 1
   */
  public static Yardage of(Plan plan) {
    Width width = Width.of(plan);
    WarpLength length =
        plan.warp()
            .length()
            .map(given -> WarpLength.given(given, plan.pieces(), plan.allowances()))
            .orElseGet(() -> WarpLength.forPieces(plan.pieces(), plan.allowances()));
    List<Need> needs = new ArrayList<>(warpNeeds(plan, width.ends(), length.total()));
    needs.addAll(weftNeeds(plan, width, length));
    return new Yardage(width, length, needs);
  }

  private static List<Need> warpNeeds(Plan plan, int total, Length length) {
    Warp warp = plan.warp();
    List<OrderEntry> order = warp.order();
    List<Long> ends = RepairEnds.added(WarpOrder.ends(warp, total), order, plan.allowances().repairEnds());
    BigFraction oneThread = length.exactTenths().multiply(plan.allowances().winding().growth());
    List<Need> needs = new ArrayList<>();
    for (int i = 0; i < order.size(); i++) {
      OrderEntry entry = order.get(i);
      needs.add(need(Need.Role.WARP, entry.yarn(), ends.get(i), oneThread.multiply(entry.strands()), entry.oneLot()));
    }
    warp.selvedge().ifPresent(
        selvedge -> needs.add(need(Need.Role.WARP, selvedge.yarn(), warp.selvedgeEnds(), oneThread.multiply(selvedge.strands()), false)));
    return joined(needs);
  }

  private static List<Need> weftNeeds(Plan plan, Width width, WarpLength warp) {
    List<Need> needs = new ArrayList<>();
    for (List<Weft> wefts : WeftOrder.passages(plan.wefts())) {
      List<Long> picks = WeftOrder.picks(plan.weftSuccession(), wefts, picksIn(plan, wefts.getFirst(), warp));
      for (int i = 0; i < wefts.size(); i++) {
        Weft weft = wefts.get(i);
        BigFraction onePick =
            width.inReedTenths().multiply(weft.width()).multiply(plan.allowances().weftTakeUp().yarnPerCloth()).multiply(weft.strands());
        needs.add(need(Need.Role.WEFT, weft.yarn(), picks.get(i), onePick, weft.oneLot()));
      }
    }
    return joined(needs);
  }

  static long picksIn(Plan plan, Weft weft, WarpLength warp) {
    Sett picks = weft.picks();
    BigFraction woven = weft.length().map(length -> length.exactTenths().add(plan.allowances().sampledCloth())).orElse(warp.woven());
    return Exact.roundedUp(picks.threadsIn(woven));
  }

  private static Need need(Need.Role role, YarnColour yarn, long threads, BigFraction perThread, boolean oneLot) {
    return new Need(
        yarn,
        role,
        threads,
        Length.ofTenths(perThread, RoundingMode.CEILING),
        Length.ofTenths(perThread.multiply(threads), RoundingMode.CEILING),
        oneLot);
  }

  /** Groups of the same yarn, whose threads are alike, are one need; each that must come from one lot stays its own. */
  private static List<Need> joined(List<Need> needs) {
    Map<List<Object>, Need> joined = new LinkedHashMap<>();
    for (Need need : needs) {
      joined.merge(need.oneLot() ? List.<Object>of(joined.size()) : List.of(need.yarn(), need.perThread()), need, Yardage::sum);
    }
    return List.copyOf(joined.values());
  }

  private static Need sum(Need one, Need other) {
    return new Need(
        one.yarn(), one.role(), one.threads() + other.threads(), one.perThread(), one.length().plus(other.length()));
  }
}
