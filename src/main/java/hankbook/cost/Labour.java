package hankbook.cost;

import hankbook.measure.DurationText;
import hankbook.measure.MoneyText;
import hankbook.measure.Phrase;
import hankbook.plan.WorkKind;
import java.math.BigInteger;
import java.time.Duration;
import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;
import org.joda.money.Money;

/**
 * One kind of work on a plan.
 *
 * @param kind of work
 * @param count of ends, picks or pieces, at least zero
 * @param unit how long each takes
 * @param hourly what an hour costs, where that is said
 */
public record Labour(WorkKind kind, long count, UnitTime unit, Optional<Money> hourly) {
  private static final BigInteger HOUR = BigInteger.valueOf(Duration.ofHours(1).toMillis());

  /** How long all of it takes. */
  public Duration time() {
    return unit.each().multipliedBy(count);
  }

  /** What all of it costs in the smallest coin, exactly; nothing where no rate is said. */
  BigFraction coins() {
    BigInteger milliseconds = BigInteger.valueOf(unit.each().toMillis()).multiply(BigInteger.valueOf(count));
    return hourly.map(rate -> BigFraction.of(milliseconds.multiply(BigInteger.valueOf(rate.getAmountMinorLong())), HOUR)).orElse(BigFraction.ZERO);
  }

  /** What is done, to how much and how long: {@code 690 ends, 30 s each, 5 h 45 min}. */
  public String words() {
    return phrase().english();
  }

  /** The same, to be said in any language. */
  public Phrase phrase() {
    String each = DurationText.rounded(unit.each());
    String all = DurationText.rounded(time());
    return switch (kind.per()) {
      case END -> Phrase.count(count, "{0} end, {1} each ({2}), {3}", "{0} ends, {1} each ({2}), {3}", each, unit.from(), all);
      case PICK -> Phrase.count(count, "{0} pick, {1} each ({2}), {3}", "{0} picks, {1} each ({2}), {3}", each, unit.from(), all);
      case PIECE -> Phrase.count(count, "{0} piece, {1} each ({2}), {3}", "{0} pieces, {1} each ({2}), {3}", each, unit.from(), all);
    };
  }

  /** The same with the rate, where there is one. */
  String basis() {
    return words() + hourly.map(rate -> " at " + MoneyText.print(rate) + " an hour").orElse("");
  }
}
