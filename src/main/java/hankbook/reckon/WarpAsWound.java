package hankbook.reckon;

import hankbook.measure.Length;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * A warp as it was, as far as it was measured.
 *
 * @param length of each end as it was wound, over zero
 * @param ends in all, selvedges with them and repair ends without, at least 1
 * @param broken ends that broke and were mended with an end of spare yarn each, at least zero
 * @param loomWaste of the warp's length what could not be woven, at least zero
 * @param sampling of the warp's length what went into sampling, at least zero
 * @param widthInReed over zero
 */
public record WarpAsWound(
    Optional<Length> length, OptionalInt ends, OptionalInt broken, Optional<Length> loomWaste, Optional<Length> sampling, Optional<Length> widthInReed) {
  /** Nothing was measured. */
  public static final WarpAsWound UNMEASURED =
      new WarpAsWound(Optional.empty(), OptionalInt.empty(), OptionalInt.empty(), Optional.empty(), Optional.empty(), Optional.empty());

  public WarpAsWound {
    Measured.overZero("the warp's length", length);
    Measured.atLeast("ends", ends, 1);
    Measured.atLeast("broken ends", broken, 0);
    Measured.zeroOrMore("loom waste", loomWaste);
    Measured.zeroOrMore("sampling", sampling);
    Measured.overZero("the width in the reed", widthInReed);
  }
}
