package hankbook.yarn;

import hankbook.measure.Exact;
import hankbook.measure.Grist;
import hankbook.measure.Length;
import hankbook.measure.Mass;
import hankbook.measure.Percentage;
import hankbook.measure.Phrase;
import hankbook.measure.Unreadable;
import java.math.BigDecimal;
import java.math.RoundingMode;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * A length of a yarn that was measured and weighed, to know its grist better than its yarn number says it.
 *
 * @param length of the sample, over zero
 * @param mass of it, over zero
 * @param division of the balance, over zero
 * @param within how far the length may be off, as a rectangular half-width; less than the length
 */
public record GristSample(Length length, Mass mass, Mass division, Length within) {
  /** A sample less sure than this tells nothing that a yarn number does not. */
  private static final double LEAST_SURE = 0.05;

  public GristSample {
    if (!length.isPositive()) {
      throw new Unreadable(length.toString(), "a sample length over zero");
    }
    if (mass.milligrams() <= 0) {
      throw new Unreadable(mass.toString(), "a sample mass over zero");
    }
    if (division.milligrams() <= 0) {
      throw new Unreadable(division.toString(), "a balance's division over zero");
    }
    if (within.isNegative() || within.compareTo(length) >= 0) {
      throw new Unreadable(within.toString(), Phrase.of("less than the length of the sample, {0}", length));
    }
    double uncertainty = uncertainty(length, mass, division, within);
    if (uncertainty > LEAST_SURE) {
      throw new Unreadable(mass + " on a balance of " + division,
          Phrase.of("a longer sample or a finer balance: the grist would be known to {0} % only", Math.round(100 * uncertainty)));
    }
  }

  /** How far off a length is taken to be that was cut along a rule: half a hundredth; common practice. */
  public static Length usuallyWithin(Length length) {
    return Length.ofTenths(length.exactTenths().divide(200), RoundingMode.CEILING);
  }

  /** Mass over length. */
  public Grist grist() {
    return new Grist(BigFraction.of(mass.milligrams()).multiply(Length.metres(1).tenthsOfMillimetre()).divide(length.exactTenths()));
  }

  /**
   * The relative standard uncertainty of the grist, after JCGM 100:2008: the division over √12 for each of two readings, empty and laden,
   * and the length's half-width over √3, as squares.
   */
  public Percentage uncertainty() {
    BigDecimal relative = BigDecimal.valueOf(uncertainty(length, mass, division, within)).setScale(9, RoundingMode.HALF_UP);
    return new Percentage(Exact.of(relative), Percentage.Base.UNSAID);
  }

  private static double uncertainty(Length length, Mass mass, Mass division, Length within) {
    double ofMass = Math.sqrt(2.0 / 12) * division.milligrams() / mass.milligrams();
    double ofLength = within.tenthsOfMillimetre() / Math.sqrt(3) / length.tenthsOfMillimetre();
    return Math.hypot(ofMass, ofLength);
  }
}
