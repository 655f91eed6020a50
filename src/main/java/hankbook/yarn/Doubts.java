package hankbook.yarn;

import hankbook.measure.Mass;
import hankbook.measure.Percentage;

/**
 * How far each way of knowing a length is trusted: relative standard uncertainties, except where said.
 *
 * @param bareLength of a length that is only printed, with no mass to judge it by
 * @param balanceDivision the balance's division, which each of two weighings rounds to
 * @param unmeasuredGrist of a yarn number that no sample of the yarn was weighed for
 * @param turns of a count of turns times the reel's circumference
 */
public record Doubts(Percentage bareLength, Mass balanceDivision, Percentage unmeasuredGrist, Percentage turns) {
  /** Common practice, as long as nothing else is set. */
  public static final Doubts DEFAULT = new Doubts(Percentage.parse("3 %"), Mass.grams(1), Percentage.parse("2 %"), Percentage.parse("1 %"));
}
