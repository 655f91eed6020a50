package hankbook.cost;

import hankbook.measure.Length;
import hankbook.plan.Apportionment;
import hankbook.plan.Making;
import hankbook.plan.Need;
import hankbook.plan.Plan;
import hankbook.plan.WarpLength;
import hankbook.plan.Weft;
import hankbook.plan.Yardage;
import hankbook.yarn.YarnColour;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.apache.commons.numbers.fraction.BigFraction;

/** Divides lengths of a plan's yarns by what becomes of them; the parts sum to the lengths. */
final class YarnUses {
  private final Plan plan;
  private final Yardage yardage;
  private final Yardage unmended;

  YarnUses(Plan plan, Yardage yardage) {
    this.plan = plan;
    this.yardage = yardage;
    this.unmended = Yardage.of(Making.of(plan).withRepairs(0).plan());
  }

  /** So much of a yarn in the warp and so much of it in the weft, by what becomes of it; uses without a length are left out. */
  Map<YarnUse, Length> of(YarnColour yarn, Length warp, Length weft) {
    Map<YarnUse, Length> lengths = new EnumMap<>(YarnUse.class);
    add(lengths, warp, warpParts(yarn));
    add(lengths, weft, weftParts(yarn));
    lengths.values().removeIf(Length::isZero);
    return lengths;
  }

  private static void add(Map<YarnUse, Length> lengths, Length whole, Map<YarnUse, BigFraction> parts) {
    List<Long> tenths = Apportionment.of(whole.tenthsOfMillimetre(), List.copyOf(parts.values()), "a yarn's uses");
    List<YarnUse> uses = List.copyOf(parts.keySet());
    for (int i = 0; i < uses.size(); i++) {
      lengths.merge(uses.get(i), new Length(tenths.get(i)), Length::plus);
    }
  }

  private Map<YarnUse, BigFraction> warpParts(YarnColour yarn) {
    WarpLength warp = yardage.warp();
    Length waste = Length.min(plan.allowances().loomWaste(), warp.total());
    Length sampling = Length.min(plan.allowances().sampling(), warp.total().minus(waste));
    BigFraction wound = BigFraction.ONE.divide(plan.allowances().winding().growth());
    BigFraction mending = repairs(yarn).multiply(wound);
    BigFraction threads = wound.subtract(mending);
    Map<YarnUse, BigFraction> parts = new EnumMap<>(YarnUse.class);
    parts.put(YarnUse.SAMPLING, threads.multiply(part(sampling, warp.total())));
    parts.put(YarnUse.LOOM_WASTE, threads.multiply(part(waste, warp.total())));
    parts.put(YarnUse.WARP, threads.subtract(parts.get(YarnUse.SAMPLING)).subtract(parts.get(YarnUse.LOOM_WASTE)));
    parts.put(YarnUse.REPAIRS, mending);
    parts.put(YarnUse.WINDING, BigFraction.ONE.subtract(wound));
    return parts;
  }

  private BigFraction repairs(YarnColour yarn) {
    Length mended = inWarp(yardage, yarn);
    return part(mended.minus(inWarp(unmended, yarn)), mended);
  }

  private static Length inWarp(Yardage yardage, YarnColour yarn) {
    return yardage.needs().stream()
        .filter(need -> need.role() == Need.Role.WARP && need.yarn().equals(yarn))
        .map(Need::length)
        .reduce(Length.ZERO, Length::plus);
  }

  private static BigFraction part(Length part, Length whole) {
    return whole.isZero() ? BigFraction.ZERO : part.exactTenths().divide(whole.exactTenths());
  }

  /** The weft of a yarn, its wefts weighed by their picks, strands and widths. */
  private Map<YarnUse, BigFraction> weftParts(YarnColour yarn) {
    BigFraction sampled = BigFraction.ZERO;
    BigFraction woven = BigFraction.ZERO;
    BigFraction cloth = plan.allowances().sampledCloth();
    for (Weft weft : plan.wefts()) {
      if (weft.yarn().equals(yarn)) {
        BigFraction weight = weft.picks().perTenth().multiply(weft.share()).multiply(weft.strands()).multiply(weft.width());
        sampled = sampled.add(weight.multiply(cloth));
        woven = woven.add(weight.multiply(weft.length().map(length -> length.exactTenths().add(cloth)).orElse(yardage.warp().woven())));
      }
    }
    BigFraction part = woven.signum() == 0 ? BigFraction.ZERO : sampled.divide(woven);
    Map<YarnUse, BigFraction> parts = new EnumMap<>(YarnUse.class);
    parts.put(YarnUse.WEFT, BigFraction.ONE.subtract(part));
    parts.put(YarnUse.SAMPLING, part);
    return parts;
  }
}
