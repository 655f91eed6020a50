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
    WarpLength length = WarpLength.of(plan);
    List<Need> needs = new ArrayList<>(warpNeeds(plan, width.ends(), length.total()));
    needs.addAll(weftNeeds(plan, width, length));
    return new Yardage(width, length, needs);
  }

  private static List<Need> warpNeeds(Plan plan, int total, Length length) {
    List<OrderEntry> order = plan.warp().order();
    List<Long> ends = new ArrayList<>(WarpOrder.ends(order, total));
    int charged = mostEnds(ends);
    ends.set(charged, ends.get(charged) + plan.allowances().repairEnds());
    BigFraction oneThread = length.exactTenths().multiply(plan.allowances().winding().growth());
    List<Need> needs = new ArrayList<>();
    for (int i = 0; i < order.size(); i++) {
      OrderEntry entry = order.get(i);
      needs.add(need(Need.Role.WARP, entry.yarn(), ends.get(i), oneThread.multiply(entry.strands())));
    }
    return joined(needs);
  }

  private static int mostEnds(List<Long> ends) {
    int most = 0;
    for (int i = 1; i < ends.size(); i++) {
      most = ends.get(i) > ends.get(most) ? i : most;
    }
    return most;
  }

  /** Wefts that share their picks: the same picks to the unit, width and length woven. */
  private record Passage(BigFraction picks, BigFraction width, Length length) {}

  private static List<Need> weftNeeds(Plan plan, Width width, WarpLength warp) {
    Map<Passage, List<Weft>> passages = new LinkedHashMap<>();
    for (Weft weft : plan.wefts()) {
      Passage passage = new Passage(weft.picks().perTenth(), weft.width(), weft.length().orElse(Length.ZERO));
      passages.computeIfAbsent(passage, none -> new ArrayList<>()).add(weft);
    }
    List<Need> needs = new ArrayList<>();
    for (List<Weft> wefts : passages.values()) {
      String whose = "the weft of " + wefts.get(0).picks();
      List<Long> picks = Apportionment.of(picksIn(plan, wefts.get(0), warp), wefts.stream().map(Weft::share).toList(), whose);
      for (int i = 0; i < wefts.size(); i++) {
        Weft weft = wefts.get(i);
        BigFraction onePick =
            width.inReedTenths().multiply(weft.width()).multiply(plan.allowances().weftTakeUp().yarnPerCloth()).multiply(weft.strands());
        needs.add(need(Need.Role.WEFT, weft.yarn(), picks.get(i), onePick));
      }
    }
    return joined(needs);
  }

  private static long picksIn(Plan plan, Weft weft, WarpLength warp) {
    Sett picks = weft.picks();
    BigFraction woven = weft.length().map(length -> length.exactTenths().add(plan.allowances().sampledCloth())).orElse(warp.woven());
    return Exact.roundedUp(picks.threadsIn(woven));
  }

  private static Need need(Need.Role role, YarnColour yarn, long threads, BigFraction perThread) {
    return new Need(
        yarn,
        role,
        threads,
        Length.ofTenths(perThread, RoundingMode.CEILING),
        Length.ofTenths(perThread.multiply(threads), RoundingMode.CEILING));
  }

  /** Groups of the same yarn, whose threads are alike, are one need. */
  private static List<Need> joined(List<Need> needs) {
    Map<List<Object>, Need> joined = new LinkedHashMap<>();
    for (Need need : needs) {
      joined.merge(List.of(need.yarn(), need.perThread()), need, Yardage::sum);
    }
    return List.copyOf(joined.values());
  }

  private static Need sum(Need one, Need other) {
    return new Need(
        one.yarn(), one.role(), one.threads() + other.threads(), one.perThread(), one.length().plus(other.length()));
  }
}
