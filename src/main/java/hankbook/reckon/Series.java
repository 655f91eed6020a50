package hankbook.reckon;

import hankbook.measure.Exact;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import org.apache.commons.numbers.fraction.BigFraction;
import org.apache.commons.statistics.distribution.TDistribution;

/**
 * Values of one thing, at least one, and what they say of the next.
 *
 * @param values to twelve places, so that they add up exactly however many there are
 */
record Series(List<BigDecimal> values) {
  private static final int PLACES = 12;
  private static final double UPPER = 0.975;

  static Series of(List<BigFraction> values) {
    return new Series(values.stream().map(value -> Exact.decimal(value, PLACES, RoundingMode.HALF_EVEN)).toList());
  }

  int count() {
    return values.size();
  }

  BigFraction mean() {
    return Exact.of(values.stream().reduce(BigDecimal.ZERO, BigDecimal::add)).divide(count());
  }

  /** How far each lies from the mean. */
  private List<Double> deviations() {
    BigFraction mean = mean();
    return values.stream().map(value -> Exact.of(value).subtract(mean).doubleValue()).toList();
  }

  /** The sample standard deviation, of at least two. */
  double deviation() {
    return Math.sqrt(deviations().stream().mapToDouble(from -> from * from).sum() / (count() - 1));
  }

  /** The standard uncertainty of the next value, of at least two: that of the values and that of their mean. */
  double predicted() {
    return deviation() * Math.sqrt(1 + 1.0 / count());
  }

  /** How far from the mean 95 of 100 next values lie at most, of at least two. */
  double reach() {
    return TDistribution.of(count() - 1).inverseCumulativeProbability(UPPER) * predicted();
  }
}
