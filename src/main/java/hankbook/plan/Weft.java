package hankbook.plan;

import hankbook.measure.Length;
import hankbook.measure.Sett;
import hankbook.measure.Unreadable;
import hankbook.yarn.YarnColour;
import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * One weft yarn of a plan.
 *
 * @param yarn the yarn and its colour
 * @param picks picks to a unit of woven length
 * @param share of the picks, from 0 to 1; wefts of the same picks and width share 1 between them
 * @param strands threads that go as one pick, at least 1
 * @param width the part of the reed it crosses, over 0 to 1
 * @param length woven, where the plan has no pieces to tell it
 */
public record Weft(YarnColour yarn, Sett picks, BigFraction share, int strands, BigFraction width, Optional<Length> length) {
  public Weft {
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

  /** The same weft of another yarn. */
  public Weft withYarn(YarnColour other) {
    return new Weft(other, picks, share, strands, width, length);
  }

  /** The same weft with other picks. */
  public Weft withPicks(Sett other) {
    return new Weft(yarn, other, share, strands, width, length);
  }

  /** The same weft with another length woven. */
  public Weft withLength(Optional<Length> other) {
    return new Weft(yarn, picks, share, strands, width, other);
  }
}
