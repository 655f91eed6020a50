package hankbook.exchange;

import hankbook.measure.Unreadable;
import hankbook.plan.Plan;
import hankbook.plan.Warp;
import hankbook.plan.WarpOrder;
import hankbook.plan.Width;
import java.util.Optional;
import java.util.OptionalLong;

/**
 * An order of ends that makes more or fewer than its warp has.
 *
 * @param fault what is wrong with the order, at the field where it is written, or at the order as a whole where its groups are counted
 * @param takeable how many ends the warp could be given to agree with it; empty where the ends come from sections
 */
public record OrderedEnds(Fault fault, OptionalLong takeable) {
  private static final String WRITTEN = "warp.succession";
  private static final String COUNTED = "warp.order";

  /** The order of a draft; empty where it agrees with the warp, or the draft cannot be read. */
  public static Optional<OrderedEnds> of(PlanDraft draft) {
    try {
      return of(PlanFile.read("plan", draft.json()));
    } catch (BadInput unreadable) {
      return Optional.empty();
    }
  }

  private static Optional<OrderedEnds> of(Plan plan) {
    Warp warp = plan.warp();
    OptionalLong made = WarpOrder.made(warp);
    if (made.isEmpty()) {
      return Optional.empty();
    }
    try {
      WarpOrder.ends(warp, Width.of(plan).ends());
      return Optional.empty();
    } catch (Unreadable other) {
      Fault fault = new Fault(warp.succession().isPresent() ? WRITTEN : COUNTED, other.found(), other.wanted());
      return Optional.of(new OrderedEnds(fault, warp.sections().isPresent() ? OptionalLong.empty() : made));
    }
  }
}
