package hankbook.reckon;

import hankbook.measure.Phrase;
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
  public Phrase plans() {
    return Phrase.count(count(), "{0} plan {1}", "{0} plans {1}", group.phrase());
  }

  /** The interval in words, {@code 5.9 to 8.9 %}: nothing is less than 0, nor is more lost of a thing than all of it. Empty of a single lesson. */
  public String range() {
    return scatter().map(Phrase::english).orElse("");
  }

  /** The same, to be said in any language. */
  public Optional<Phrase> scatter() {
    return interval().map(this::range);
  }

  private Phrase range(Interval interval) {
    LearntUnit unit = which.unit();
    BigFraction high = unit.within(interval.high());
    BigFraction low = unit.within(interval.low());
    if (interval.low().signum() < 0) {
      return Phrase.of("up to {0}", unit.phrase(high));
    }
    return unit.number(low).equals(unit.number(high)) ? Phrase.of("always the same") : Phrase.of("{0} to {1}", unit.low(low), unit.phrase(high));
  }

  private boolean hasSpread() {
    return count() >= FEWEST_FOR_A_SPREAD;
  }
}
