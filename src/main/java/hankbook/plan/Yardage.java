package hankbook.plan;

import java.util.List;

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
    return new Yardage(width, length, Making.of(plan, width, length).needs());
  }
}
