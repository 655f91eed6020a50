package hankbook.plan;

import hankbook.measure.Exact;
import hankbook.measure.Length;
import java.math.RoundingMode;
import java.util.Comparator;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * How wide a warp stands in the reed and how many ends that takes.
 *
 * <p>Width in the reed = finished width / ((1 − widthwise shrinkage) × (1 − draw-in)), of the widest piece. Ends = that × sett, rounded
 * up to a whole multiple, and the selvedges. Ends given outright make the width instead: (ends − selvedges) / sett.
 *
 * @param ends all ends, selvedges included
 * @param inReedTenths the width in the reed in tenths of a millimetre, exactly
 */
public record Width(int ends, BigFraction inReedTenths) {
  /** The width of a plan's warp and its ends. */
  public static Width of(Plan plan) {
    Warp warp = plan.warp();
    if (warp.ends().isPresent()) {
      int ends = warp.ends().getAsInt();
      return new Width(ends, warp.sett().widthOf(ends - warp.selvedgeEnds()));
    }
    Length widest = plan.pieces().stream().map(Piece::width).max(Comparator.naturalOrder()).orElseThrow();
    BigFraction inReed = widest.exactTenths().divide(stateFactor(plan.allowances()));
    long across = Exact.roundedUp(warp.sett().threadsIn(inReed));
    long multiples = Math.ceilDiv(across, (long) warp.endsMultiple());
    return new Width(Math.toIntExact(multiples * warp.endsMultiple() + warp.selvedgeEnds()), inReed);
  }

  private static BigFraction stateFactor(Allowances allowances) {
    return allowances.widthShrinkage().remaining().multiply(allowances.drawIn().remaining());
  }

  /**
   * How much wider its ends stand at the plan's sett than the width that was reckoned for them: ends that are rounded up to a multiple do
   * not widen the plan. In tenths of a millimetre, exactly.
   */
  public BigFraction beyond(Warp warp) {
    return warp.sett().widthOf((long) ends - warp.selvedgeEnds()).subtract(inReedTenths);
  }

  /** The width in the reed as it is recorded. */
  public Length inReed() {
    return Length.ofTenths(inReedTenths, RoundingMode.HALF_UP);
  }

  /** The width the finished cloth of these ends has. */
  public Length finished(Allowances allowances) {
    return Length.ofTenths(inReedTenths.multiply(stateFactor(allowances)), RoundingMode.HALF_UP);
  }
}
