package hankbook.plan;

import hankbook.measure.Length;
import hankbook.measure.Percentage;
import hankbook.measure.Unreadable;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * What a plan adds for the ways of cloth and loom. Shrinkage and draw-in are of the larger state, take-up of the cloth unless it says
 * of the yarn.
 *
 * @param warpTakeUp how much longer the warp is than the cloth it is woven up in
 * @param weftTakeUp how much longer a pick is than the reed is wide
 * @param drawIn how much narrower the cloth at the fell is than the reed
 * @param lengthShrinkage lost in length from the loom to the finished cloth
 * @param widthShrinkage lost in width from the loom to the finished cloth
 * @param sampling warp given to sampling
 * @param loomWaste warp that cannot be woven
 * @param gap unwoven warp between two pieces
 * @param winding yarn lost in winding
 * @param repairEnds spare ends for mending, at least 0
 * @param roundUpTo the step the warp length is rounded up to; zero for none
 */
public record Allowances(
    Percentage warpTakeUp,
    Percentage weftTakeUp,
    Percentage drawIn,
    Percentage lengthShrinkage,
    Percentage widthShrinkage,
    Length sampling,
    Length loomWaste,
    Length gap,
    Percentage winding,
    int repairEnds,
    Length roundUpTo) {

  /** No allowance at all. */
  public static final Allowances NONE =
      new Allowances(
          Percentage.ZERO,
          Percentage.ZERO,
          Percentage.ZERO,
          Percentage.ZERO,
          Percentage.ZERO,
          Length.ZERO,
          Length.ZERO,
          Length.ZERO,
          Percentage.ZERO,
          0,
          Length.ZERO);

  public Allowances {
    drawIn.remaining();
    lengthShrinkage.remaining();
    widthShrinkage.remaining();
    if (repairEnds < 0) {
      throw new Unreadable(Integer.toString(repairEnds), "repair ends of at least 0");
    }
  }

  /** What is woven of the sampling, which is a length of warp: cloth off the loom, in tenths of a millimetre, exactly. */
  public BigFraction sampledCloth() {
    return sampling.exactTenths().divide(warpTakeUp.yarnPerCloth());
  }

  /** The same allowances with another length of warp given to sampling. */
  public Allowances withSampling(Length other) {
    return new Allowances(
        warpTakeUp, weftTakeUp, drawIn, lengthShrinkage, widthShrinkage, other, loomWaste, gap, winding, repairEnds, roundUpTo);
  }

  /** The same allowances with another take-up of the warp. */
  public Allowances withWarpTakeUp(Percentage other) {
    return new Allowances(
        other, weftTakeUp, drawIn, lengthShrinkage, widthShrinkage, sampling, loomWaste, gap, winding, repairEnds, roundUpTo);
  }

  /** The same allowances with another take-up of the weft. */
  public Allowances withWeftTakeUp(Percentage other) {
    return new Allowances(
        warpTakeUp, other, drawIn, lengthShrinkage, widthShrinkage, sampling, loomWaste, gap, winding, repairEnds, roundUpTo);
  }

  /** The same allowances with another draw-in. */
  public Allowances withDrawIn(Percentage other) {
    return new Allowances(
        warpTakeUp, weftTakeUp, other, lengthShrinkage, widthShrinkage, sampling, loomWaste, gap, winding, repairEnds, roundUpTo);
  }

  /** The same allowances with another shrinkage in length. */
  public Allowances withLengthShrinkage(Percentage other) {
    return new Allowances(
        warpTakeUp, weftTakeUp, drawIn, other, widthShrinkage, sampling, loomWaste, gap, winding, repairEnds, roundUpTo);
  }

  /** The same allowances with another shrinkage in width. */
  public Allowances withWidthShrinkage(Percentage other) {
    return new Allowances(
        warpTakeUp, weftTakeUp, drawIn, lengthShrinkage, other, sampling, loomWaste, gap, winding, repairEnds, roundUpTo);
  }

  /** The same allowances with another loom waste. */
  public Allowances withLoomWaste(Length other) {
    return new Allowances(
        warpTakeUp, weftTakeUp, drawIn, lengthShrinkage, widthShrinkage, sampling, other, gap, winding, repairEnds, roundUpTo);
  }

  /** The same allowances with another part lost in winding. */
  public Allowances withWinding(Percentage other) {
    return new Allowances(
        warpTakeUp, weftTakeUp, drawIn, lengthShrinkage, widthShrinkage, sampling, loomWaste, gap, other, repairEnds, roundUpTo);
  }

  /** The same allowances with another step that the warp length is rounded up to, zero for none. */
  public Allowances withRoundUpTo(Length other) {
    return new Allowances(
        warpTakeUp, weftTakeUp, drawIn, lengthShrinkage, widthShrinkage, sampling, loomWaste, gap, winding, repairEnds, other);
  }
}
