package hankbook.allot;

import hankbook.measure.Length;
import hankbook.yarn.YarnColour;
import org.apache.commons.statistics.distribution.NormalDistribution;

/**
 * What a plan needs of a yarn against what is free, and how sure that is.
 *
 * @param yarn the yarn and its colour
 * @param need in every role
 * @param free on the shelf and promised to no other plan
 * @param uncertainty combined standard uncertainty of what is free
 * @param wholeEnds whether every end can be one unbroken thread and the weft still has its metres
 */
public record Cover(YarnColour yarn, Length need, Length free, Length uncertainty, boolean wholeEnds) {
  /** The risk of running short over which a yarn is tight. */
  static final double LIMIT = 0.05;

  private static final NormalDistribution STANDARD = NormalDistribution.of(0, 1);

  /** What is left over; negative where it is short. */
  public Length margin() {
    return free.minus(need);
  }

  /** The risk of running short, from 0 to 1: Φ(−margin / uncertainty). */
  public double risk() {
    if (uncertainty.isZero()) {
      return margin().isNegative() ? 1 : 0;
    }
    return STANDARD.cumulativeProbability(-(double) margin().tenthsOfMillimetre() / uncertainty.tenthsOfMillimetre());
  }

  /** Short where metres or whole ends lack, tight where the risk is over the limit. */
  public Verdict verdict() {
    if (margin().isNegative() || !wholeEnds) {
      return Verdict.SHORT;
    }
    return risk() > LIMIT ? Verdict.TIGHT : Verdict.COVERED;
  }
}
