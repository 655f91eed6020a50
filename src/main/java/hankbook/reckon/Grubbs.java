package hankbook.reckon;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import org.apache.commons.numbers.fraction.BigFraction;
import org.apache.commons.statistics.distribution.TDistribution;

/**
 * Grubbs' test for a value that does not belong to the others, two-sided at 5 %: the greatest distance from the mean in standard deviations is held against
 * (n − 1)/√n × √(t²/(n − 2 + t²)), t being the quantile of Student's t for 1 − 0.05/(2n) with n − 2 degrees of freedom. What is found is set aside and the
 * rest tested again, since one odd value hides another. The formula is from memory.
 */
final class Grubbs {
  private static final int FEWEST = 3;
  private static final double LEVEL = 0.05;

  private Grubbs() {}

  /** The distance in standard deviations that the greatest of so many values goes beyond one time in twenty. */
  static double critical(int count) {
    double quantile = TDistribution.of(count - 2).inverseCumulativeProbability(1 - LEVEL / (2 * count));
    double square = quantile * quantile;
    return (count - 1) / Math.sqrt(count) * Math.sqrt(square / (count - 2 + square));
  }

  /** Which lessons do not belong to the others, in their order. */
  static List<Lesson> odd(List<Lesson> lessons) {
    List<Lesson> rest = new ArrayList<>(lessons);
    List<Lesson> odd = new ArrayList<>();
    while (rest.size() >= FEWEST) {
      Series series = Series.of(rest.stream().map(Lesson::value).toList());
      BigFraction mean = series.mean();
      int farthest = farthest(rest, mean);
      Lesson suspect = rest.get(farthest);
      double distance = suspect.value().subtract(mean).abs().doubleValue();
      if (suspect.which().unit().nearlyAlike(suspect.value(), mean) || distance <= critical(rest.size()) * series.deviation()) {
        break;
      }
      odd.add(rest.remove(farthest));
    }
    return lessons.stream().filter(odd::contains).toList();
  }

  private static int farthest(List<Lesson> lessons, BigFraction mean) {
    Comparator<Integer> byDistance = Comparator.comparing(at -> lessons.get(at).value().subtract(mean).abs());
    return IntStream.range(0, lessons.size()).boxed().max(byDistance).orElseThrow();
  }
}
