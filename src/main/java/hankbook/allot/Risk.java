package hankbook.allot;

import hankbook.measure.Length;
import hankbook.measure.Phrase;
import org.apache.commons.statistics.distribution.NormalDistribution;

/**
 * The risk of running short.
 *
 * @param chance from 0 to 1
 */
public record Risk(double chance) {
  private static final NormalDistribution STANDARD = NormalDistribution.of(0, 1);
  private static final double HARDLY_ANY = 0.001;
  private static final double MORE_LIKELY = 0.55;
  private static final double ALMOST_CERTAIN = 0.99;

  public Risk {
    if (!(chance >= 0 && chance <= 1)) {
      throw new IllegalArgumentException("risk is " + chance + ", wanted one from 0 to 1");
    }
  }

  /** Φ(−margin / uncertainty), the errors together being taken as normal; certainty where nothing is uncertain. */
  static Risk of(Length margin, Length uncertainty) {
    if (uncertainty.isZero()) {
      return new Risk(margin.isNegative() ? 1 : 0);
    }
    return new Risk(STANDARD.cumulativeProbability(-(double) margin.tenthsOfMillimetre() / uncertainty.tenthsOfMillimetre()));
  }

  /** How much is said of a risk. */
  public enum Sort {
    /** Under one in a thousand. */
    HARDLY_ANY,
    /** So many that one of them is expected, see {@link #oneIn}. */
    ONE_IN,
    MORE_LIKELY,
    ALMOST_CERTAIN
  }

  /** How much is said of it. */
  public Sort sort() {
    if (chance < HARDLY_ANY) {
      return Sort.HARDLY_ANY;
    } else if (chance > ALMOST_CERTAIN) {
      return Sort.ALMOST_CERTAIN;
    }
    return chance > MORE_LIKELY ? Sort.MORE_LIKELY : Sort.ONE_IN;
  }

  /** In words that can follow "the risk is": {@code about 1 in 14}, {@code under 1 in 1000}, {@code more likely than not}. */
  public String words() {
    return phrase().english();
  }

  /** The same, to be said in any language. */
  public Phrase phrase() {
    return switch (sort()) {
      case HARDLY_ANY -> Phrase.of("under 1 in 1000");
      case ONE_IN -> Phrase.of("about 1 in {0}", oneIn());
      case MORE_LIKELY -> Phrase.of("more likely than not");
      case ALMOST_CERTAIN -> Phrase.of("almost certain");
    };
  }

  /** Whole numbers up to twenty, then two figures: nobody knows a risk better. Of how many one is expected, at least two. */
  public long oneIn() {
    long oneIn = Math.max(2, Math.round(1 / chance));
    long step = oneIn <= 20 ? 1 : oneIn <= 100 ? 5 : oneIn < 200 ? 10 : 50;
    return Math.round((double) oneIn / step) * step;
  }

  @Override
  public String toString() {
    return words();
  }
}
