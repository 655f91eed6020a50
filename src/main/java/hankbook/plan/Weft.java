package hankbook.plan;

import hankbook.measure.Length;
import hankbook.measure.Sett;
import hankbook.measure.Unreadable;
import hankbook.yarn.OneLine;
import hankbook.yarn.YarnColour;
import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * One weft yarn of a plan.
 *
 * @param yarn the yarn and its colour
 * @param mark its short name in the written order of picks
 * @param picks picks to a unit of woven length
 * @param share of the picks, from 0 to 1; wefts of the same picks and width share 1 between them, where no written order counts them
 * @param strands threads that go as one pick, at least 1
 * @param width the part of the reed it crosses, over 0 to 1
 * @param length woven, where the plan has no pieces to tell it
 * @param oneLot whether the yarn must come from one dye lot
 */
public record Weft(
    YarnColour yarn, String mark, Sett picks, BigFraction share, int strands, BigFraction width, Optional<Length> length, boolean oneLot)
    implements Marked {
  public Weft {
    mark = OneLine.of(mark);
    if (mark.isEmpty()) {
      throw new Unreadable(mark, "a mark, the yarn's short name in the order");
    }
    if (share.signum() < 0 || share.compareTo(BigFraction.ONE) > 0) {
      throw new Unreadable(share.toString(), "a share from 0 to 1");
    }
    if (strands < 1) {
      throw new Unreadable(Integer.toString(strands), "strands of at least 1");
    }
    if (width.signum() <= 0 || width.compareTo(BigFraction.ONE) > 0) {
      throw new Unreadable(width.toString(), "a part of the reed's width over 0, to 1");
    }
  }

  /** Marked by its colour and of any dye lots. */
  public Weft(YarnColour yarn, Sett picks, BigFraction share, int strands, BigFraction width, Optional<Length> length) {
    this(yarn, yarn.colour(), picks, share, strands, width, length, false);
  }

  /** Wefts that share their picks: the same picks to the unit, width and length woven. */
  record Passage(BigFraction picks, BigFraction width, Length length) {}

  Passage passage() {
    return new Passage(picks.perTenth(), width, length.orElse(Length.ZERO));
  }
}
