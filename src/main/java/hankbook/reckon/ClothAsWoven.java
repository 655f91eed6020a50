package hankbook.reckon;

import hankbook.measure.Length;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.OptionalLong;

/**
 * A cloth as it was, as far as it was measured: all that was woven for the pieces in one length, hems with it, fringes, gaps and sampling without.
 *
 * @param lengthOnLoom under tension, over zero
 * @param lengthOffLoom relaxed, over zero
 * @param lengthFinished after wet finishing, over zero
 * @param widthOnLoom at the fell, over zero
 * @param widthOffLoom relaxed, over zero
 * @param widthFinished after wet finishing, over zero
 * @param picks counted in all, of every weft and sampling with them, at least 1
 * @param pieces made, at least zero
 */
public record ClothAsWoven(
    Optional<Length> lengthOnLoom, Optional<Length> lengthOffLoom, Optional<Length> lengthFinished, Optional<Length> widthOnLoom, Optional<Length> widthOffLoom,
    Optional<Length> widthFinished, OptionalLong picks, OptionalInt pieces) {
  /** Nothing was measured. */
  public static final ClothAsWoven UNMEASURED =
      new ClothAsWoven(
          Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty(), OptionalLong.empty(), OptionalInt.empty());

  public ClothAsWoven {
    Measured.overZero("the length on the loom", lengthOnLoom);
    Measured.overZero("the length off the loom", lengthOffLoom);
    Measured.overZero("the finished length", lengthFinished);
    Measured.overZero("the width on the loom", widthOnLoom);
    Measured.overZero("the width off the loom", widthOffLoom);
    Measured.overZero("the finished width", widthFinished);
    Measured.atLeast("picks", picks, 1);
    Measured.atLeast("pieces", pieces, 0);
  }
}
