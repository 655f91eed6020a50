package hankbook.allot;

import hankbook.measure.Length;
import hankbook.measure.Percentage;
import hankbook.yarn.Uncertainty;
import hankbook.yarn.YarnColour;

/**
 * What a plan needs of a yarn against what is free, and how sure that is.
 *
 * @param yarn the yarn and its colour
 * @param need in every role
 * @param free on the shelf and promised to no other plan
 * @param doubt how surely what is free is known, and what is needed where earlier cloths tell how that scatters, and by what
 * @param wholeEnds whether every end can be one unbroken thread and the weft still has its metres
 * @param limit the risk of running short over which a yarn is tight
 */
public record Cover(YarnColour yarn, Length need, Length free, Uncertainty doubt, boolean wholeEnds, Percentage limit) {
  /** With nothing set, and of an uncertainty of which no more is known. */
  Cover(YarnColour yarn, Length need, Length free, Length uncertainty, boolean wholeEnds) {
    this(yarn, need, free, Uncertainty.outright(uncertainty), wholeEnds, Judgement.DEFAULT.percentage(Setting.RISK_LIMIT));
  }

  /** Combined standard uncertainty of what is free and what is needed. */
  public Length uncertainty() {
    return doubt.combined();
  }

  /** What is left over; negative where it is short. */
  public Length margin() {
    return free.minus(need);
  }

  /** The risk of running short. */
  public Risk chance() {
    return Risk.of(margin(), uncertainty());
  }

  /** The risk of running short, from 0 to 1. */
  public double risk() {
    return chance().chance();
  }

  /** Short where metres or whole ends lack, tight where the risk is over the limit. */
  public Verdict verdict() {
    if (margin().isNegative() || !wholeEnds) {
      return Verdict.SHORT;
    }
    return risk() > limit.fraction().doubleValue() ? Verdict.TIGHT : Verdict.COVERED;
  }
}
