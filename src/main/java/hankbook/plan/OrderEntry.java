package hankbook.plan;

import hankbook.measure.Unreadable;
import hankbook.yarn.OneLine;
import hankbook.yarn.YarnColour;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * A group of ends of one yarn in the order of a warp.
 *
 * @param yarn the yarn and its colour
 * @param mark its short name in the written order
 * @param amount how many ends, or which part of those left
 * @param strands threads that go as one end, at least 1
 * @param oneLot whether the stripe must come from one dye lot
 * @param repairEnds spare ends of this yarn for mending, at least 0
 */
public record OrderEntry(YarnColour yarn, String mark, Amount amount, int strands, boolean oneLot, int repairEnds) implements Marked {
  /** Ends counted outright, as a share of the ends that no count claims, or by the written order. */
  public sealed interface Amount {}

  /** So many ends, at least 0. */
  public record Ends(int ends) implements Amount {}

  /** A part of what is left, from 0 to 1. */
  public record Share(BigFraction part) implements Amount {
    public Share {
      if (part.signum() < 0 || part.compareTo(BigFraction.ONE) > 0) {
        throw new Unreadable(part.toString(), "a share from 0 to 1");
      }
    }
  }

  /** As many as the written order has. */
  public record Written() implements Amount {}

  public OrderEntry {
    mark = OneLine.of(mark);
    if (mark.isEmpty()) {
      throw new Unreadable(mark, "a mark, the yarn's short name in the order");
    }
    if (strands < 1) {
      throw new Unreadable(Integer.toString(strands), "strands of at least 1");
    }
    if (repairEnds < 0) {
      throw new Unreadable(Integer.toString(repairEnds), "repair ends of at least 0");
    }
  }

  /** Marked by its colour, of any dye lots, without repair ends of its own. */
  public OrderEntry(YarnColour yarn, Amount amount, int strands) {
    this(yarn, yarn.colour(), amount, strands, false, 0);
  }

  /** The same yarn and kind of end with another amount. */
  OrderEntry with(Amount changed) {
    return new OrderEntry(yarn, mark, changed, strands, oneLot, repairEnds);
  }
}
