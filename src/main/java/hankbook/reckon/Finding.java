package hankbook.reckon;

import java.util.List;
import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * What a group of cloths taught of one thing. Every lesson counts in it, also one that does not belong to the others: that is named, not dropped.
 *
 * @param which what they taught
 * @param group what the cloths have in common
 * @param lessons at least one
 */
public record Finding(Learnable which, Manner group, List<Lesson> lessons) {
  private static final int FEWEST_FOR_A_SPREAD = 2;

  public Finding {
    lessons = List.copyOf(lessons);
    if (lessons.isEmpty()) {
      throw new IllegalArgumentException("a finding of no lessons");
    }
  }

  /**
   * Where the next cloth comes out 95 times of 100, as far as the values scatter normally.
   *
   * @param low in what {@link Learnable#unit} says; may be less than nothing
   * @param high likewise
   */
  public record Interval(BigFraction low, BigFraction high) {}

  private Series series() {
    return Series.of(lessons.stream().map(Lesson::value).toList());
  }

  /** How many finished plans it comes from. */
  public int count() {
    return lessons.size();
  }

  /** In what {@link Learnable#unit} says, like all that follow. */
  public BigFraction mean() {
    return series().mean();
  }

  /** The sample standard deviation, of two at least. */
  public Optional<BigFraction> spread() {
    return hasSpread() ? Optional.of(BigFraction.from(series().deviation())) : Optional.empty();
  }

  /** The prediction interval of Student's t: mean ± t(n − 1, 0.975) × s × √(1 + 1/n), of two at least. */
  public Optional<Interval> interval() {
    if (!hasSpread()) {
      return Optional.empty();
    }
    BigFraction reach = BigFraction.from(series().reach());
    return Optional.of(new Interval(mean().subtract(reach), mean().add(reach)));
  }

  /** The standard uncertainty of the next: s × √(1 + 1/n), of two at least. */
  public Optional<BigFraction> uncertainty() {
    return hasSpread() ? Optional.of(BigFraction.from(series().predicted())) : Optional.empty();
  }

  /** Those that do not belong to the others, by Grubbs' test at 5 %, of three at least. */
  public List<Lesson> odd() {
    return Grubbs.odd(lessons);
  }

  /** The plans it comes from, in words: {@code 5 plans in 2/2 twill of wool}. */
  public String plans() {
    return count() + (count() == 1 ? " plan " : " plans ") + group.words();
  }

  /** The interval in words, {@code 5.9 to 8.9 %}: nothing is less than 0, nor is more lost of a thing than all of it. Empty of a single lesson. */
  public String range() {
    return interval().map(this::range).orElse("");
  }

  private String range(Interval interval) {
    LearntUnit unit = which.unit();
    BigFraction high = unit.within(interval.high());
    String low = unit.number(unit.within(interval.low()));
    if (interval.low().signum() < 0) {
      return "up to " + unit.print(high);
    }
    return low.equals(unit.number(high)) ? "always the same" : low + " to " + unit.print(high);
  }

  private boolean hasSpread() {
    return count() >= FEWEST_FOR_A_SPREAD;
  }
}
