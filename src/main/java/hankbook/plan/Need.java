package hankbook.plan;

import hankbook.measure.Length;
import hankbook.yarn.YarnColour;

/**
 * What a plan asks of one yarn in one role.
 *
 * @param yarn the yarn and its colour
 * @param role warp or weft
 * @param threads whole ends, repair ends included, or whole picks
 * @param perThread yarn in one end or pick, strands and allowances included; a recorded length, rounded up
 * @param length all of it, rounded up once
 * @param oneLot whether all of it must come from one dye lot; another need of the same yarn may come from another
 */
public record Need(YarnColour yarn, Role role, long threads, Length perThread, Length length, boolean oneLot) {
  /** Where a yarn goes in the cloth. */
  public enum Role {
    WARP,
    WEFT
  }

  /** Of any dye lots. */
  public Need(YarnColour yarn, Role role, long threads, Length perThread, Length length) {
    this(yarn, role, threads, perThread, length, false);
  }
}
