package hankbook.plan;

import hankbook.measure.Length;
import hankbook.yarn.YarnColour;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalLong;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * What the needs of a plan are reckoned from: as planned, or with what was found afterwards put in its place, one thing after the other.
 *
 * @param plan whose order, wefts and allowances rule
 * @param ends all ends, selvedges included, repair ends not
 * @param length of each end, in tenths of a millimetre, exactly
 * @param cloth off the loom that takes picks, sampling not included, in tenths of a millimetre, exactly
 * @param ofCloth how much of the lengths that wefts give of themselves is woven; 1 as planned
 * @param sampled cloth woven as sampling, in tenths of a millimetre, exactly
 * @param inReed the width in the reed, in tenths of a millimetre, exactly
 * @param counted picks in all, of every weft; empty where they follow from the lengths woven
 */
public record Making(
    Plan plan, int ends, BigFraction length, BigFraction cloth, BigFraction ofCloth, BigFraction sampled, BigFraction inReed, OptionalLong counted) {
  /**
   * As it is planned.
   *
   * @throws hankbook.measure.Unreadable if the plan does not add up
   */
  public static Making of(Plan plan) {
    return of(plan, Width.of(plan), WarpLength.of(plan));
  }

  static Making of(Plan plan, Width width, WarpLength warp) {
    BigFraction sampled = plan.allowances().sampledCloth();
    BigFraction cloth = saidByWefts(plan).orElseGet(() -> warp.woven().subtract(sampled));
    return new Making(plan, width.ends(), warp.total().exactTenths(), cloth, BigFraction.ONE, sampled, width.inReedTenths(), OptionalLong.empty());
  }

  /** The length that all wefts give to be woven, where they give the same. */
  private static Optional<BigFraction> saidByWefts(Plan plan) {
    List<Optional<Length>> lengths = plan.wefts().stream().map(Weft::length).distinct().toList();
    return lengths.size() == 1 ? lengths.getFirst().map(Length::exactTenths) : Optional.empty();
  }

  /**
   * With so many ends, in the proportions of the order and at the plan's sett, so that more of them stand wider.
   *
   * @throws hankbook.measure.Unreadable if they are no more than the selvedges
   */
  public Making withEnds(int other) {
    if (other == ends) {
      return this;
    }
    BigFraction wider = inReed.add(plan.warp().sett().widthOf((long) other - ends));
    return new Making(PlanVariants.withEnds(plan, other), other, length, cloth, ofCloth, sampled, wider, counted);
  }

  /** With so many repair ends in all. */
  public Making withRepairs(int repairs) {
    return new Making(RepairEnds.instead(plan, repairs), ends, length, cloth, ofCloth, sampled, inReed, counted);
  }

  /** With ends of this length, in tenths of a millimetre. */
  public Making withLength(BigFraction other) {
    return new Making(plan, ends, other, cloth, ofCloth, sampled, inReed, counted);
  }

  /** With so much cloth off the loom, and so much of it woven as sampling, in tenths of a millimetre; lengths that wefts give of themselves go with it. */
  public Making withCloth(BigFraction other, BigFraction sampling) {
    BigFraction part = cloth.signum() == 0 ? ofCloth : ofCloth.multiply(other).divide(cloth);
    return new Making(plan, ends, length, other, part, sampling, inReed, counted);
  }

  /** With so many picks in all, shared by its wefts as they would share those that were planned. */
  public Making withPicks(long picks) {
    return new Making(plan, ends, length, cloth, ofCloth, sampled, inReed, OptionalLong.of(picks));
  }

  /** With another width in the reed, in tenths of a millimetre. */
  public Making withReed(BigFraction other) {
    return new Making(plan, ends, length, cloth, ofCloth, sampled, other, counted);
  }

  /** Picks of all its wefts. */
  public long picks() {
    return WeftPicks.of(this).stream().mapToLong(WeftPicks::picks).sum();
  }

  /** How many threads of each yarn lie in the warp, strands and repair ends counted. */
  public Map<YarnColour, Long> strands() {
    Map<YarnColour, Long> strands = new LinkedHashMap<>();
    groups().forEach(group -> strands.merge(group.yarn(), group.ends() * group.strands(), Long::sum));
    return strands;
  }

  /** How much of the reed's width each yarn crosses as weft, pick by pick and strand by strand, in tenths of a millimetre, exactly. */
  public Map<YarnColour, BigFraction> crossed() {
    Map<YarnColour, BigFraction> crossed = new LinkedHashMap<>();
    WeftPicks.of(this).forEach(weft -> crossed.merge(weft.weft().yarn(), onePick(weft.weft()).multiply(weft.picks()), BigFraction::add));
    return crossed;
  }

  /** What it takes, warp first in the order's order. */
  public List<Need> needs() {
    BigFraction oneThread = length.multiply(plan.allowances().winding().growth());
    List<Need> warp = new ArrayList<>();
    groups().forEach(group -> warp.add(need(group.yarn(), Need.Role.WARP, group.ends(), oneThread.multiply(group.strands()), group.oneLot())));
    BigFraction takeUp = plan.allowances().weftTakeUp().yarnPerCloth();
    List<Need> weft = new ArrayList<>();
    WeftPicks.of(this).forEach(
        picks -> weft.add(need(picks.weft().yarn(), Need.Role.WEFT, picks.picks(), onePick(picks.weft()).multiply(takeUp), picks.weft().oneLot())));
    List<Need> needs = new ArrayList<>(joined(warp));
    needs.addAll(joined(weft));
    return List.copyOf(needs);
  }

  /**
   * Ends that lie in the warp in one way.
   *
   * @param mark of the group in the order; empty of the selvedges
   * @param ends with the repair ends
   * @param repairs how many of them are repair ends
   */
  record Group(YarnColour yarn, String mark, long ends, long repairs, int strands, boolean oneLot) {}

  List<Group> groups() {
    Warp warp = plan.warp();
    List<OrderEntry> order = warp.order();
    List<Long> ordered = WarpOrder.ends(warp, ends);
    List<Long> each = RepairEnds.added(ordered, order, plan.allowances().repairEnds());
    List<Group> groups = new ArrayList<>();
    for (int i = 0; i < order.size(); i++) {
      OrderEntry entry = order.get(i);
      groups.add(new Group(entry.yarn(), entry.mark(), each.get(i), each.get(i) - ordered.get(i), entry.strands(), entry.oneLot()));
    }
    warp.selvedge().ifPresent(selvedge -> groups.add(new Group(selvedge.yarn(), "", warp.selvedgeEnds(), 0, selvedge.strands(), false)));
    return groups;
  }

  private BigFraction onePick(Weft weft) {
    return inReed.multiply(weft.width()).multiply(weft.strands());
  }

  private static Need need(YarnColour yarn, Need.Role role, long threads, BigFraction perThread, boolean oneLot) {
    Length all = Length.ofTenths(perThread.multiply(threads), RoundingMode.CEILING);
    return new Need(yarn, role, threads, Length.ofTenths(perThread, RoundingMode.CEILING), all, oneLot);
  }

  /** Groups of the same yarn, whose threads are alike, are one need; each that must come from one lot stays its own. */
  private static List<Need> joined(List<Need> needs) {
    Map<List<Object>, Need> joined = new LinkedHashMap<>();
    for (Need need : needs) {
      joined.merge(need.oneLot() ? List.<Object>of(joined.size()) : List.of(need.yarn(), need.perThread()), need, Making::sum);
    }
    return List.copyOf(joined.values());
  }

  private static Need sum(Need one, Need other) {
    return new Need(one.yarn(), one.role(), one.threads() + other.threads(), one.perThread(), one.length().plus(other.length()));
  }
}
