package hankbook.cost;

import hankbook.allot.Risk;
import hankbook.allot.Verdict;
import hankbook.measure.Length;
import java.time.Duration;
import java.util.Optional;
import org.joda.money.Money;

/** What one plan has in a row in which plans are laid side by side. */
public sealed interface Figure {
  /** What there is, without its size being known. */
  record Unknown() implements Figure {}

  /** A length; negative where it lacks. */
  record Metres(Length length) implements Figure {}

  /** A width, which is said more finely than a length of yarn. */
  record Across(Length length) implements Figure {}

  /** So many. */
  record Count(long count) implements Figure {}

  /** An amount of money. */
  record Amount(Money money) implements Figure {}

  /** How long something takes. */
  record Time(Duration time) implements Figure {}

  /** How a plan stands. */
  record Stands(Verdict verdict) implements Figure {}

  /** The risk of running short. */
  record Chance(Risk risk) implements Figure {}

  /**
   * Which of two of a kind is the larger: over zero where this is. Risks that are said in the same words are as large as each other.
   * Empty where they cannot be compared: one is not known, or they are of two kinds or currencies.
   */
  default Optional<Integer> against(Figure other) {
    return switch (this) {
      case Metres(Length length) when other instanceof Metres(Length second) -> Optional.of(length.compareTo(second));
      case Across(Length length) when other instanceof Across(Length second) -> Optional.of(length.compareTo(second));
      case Count(long count) when other instanceof Count(long second) -> Optional.of(Long.compare(count, second));
      case Amount(Money money) when other instanceof Amount(Money second) && money.isSameCurrency(second) -> Optional.of(money.compareTo(second));
      case Time(Duration time) when other instanceof Time(Duration second) -> Optional.of(time.compareTo(second));
      case Stands(Verdict verdict) when other instanceof Stands(Verdict second) -> Optional.of(verdict.compareTo(second));
      case Chance(Risk risk) when other instanceof Chance(Risk second) -> Optional.of(risk.words().equals(second.words()) ? 0 : Double.compare(risk.chance(), second.chance()));
      default -> Optional.empty();
    };
  }

  /** How much more this is than another; under zero where it is less. Empty for what has no size, and where they cannot be compared. */
  default Optional<Figure> beyond(Figure other) {
    return switch (this) {
      case Metres(Length length) when other instanceof Metres(Length second) -> Optional.of(new Metres(length.minus(second)));
      case Across(Length length) when other instanceof Across(Length second) -> Optional.of(new Across(length.minus(second)));
      case Count(long count) when other instanceof Count(long second) -> Optional.of(new Count(count - second));
      case Amount(Money money) when other instanceof Amount(Money second) && money.isSameCurrency(second) -> Optional.of(new Amount(money.minus(second)));
      case Time(Duration time) when other instanceof Time(Duration second) -> Optional.of(new Time(time.minus(second)));
      default -> Optional.empty();
    };
  }
}
