package hankbook.cost;

import hankbook.measure.Length;
import hankbook.measure.Unreadable;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;

/**
 * A sum of money that explains itself: its parts, where it has any, sum to it.
 *
 * @param key its name in files
 * @param name what it is, as a heading
 * @param basis how it was reckoned, in words; empty where its parts or its length say it
 * @param length of yarn, where it is the cost of yarn
 * @param amount at least zero
 * @param parts in the order they are read
 */
public record CostLine(String key, String name, String basis, Optional<Length> length, Money amount, List<CostLine> parts) {
  public CostLine {
    parts = List.copyOf(parts);
    if (amount.isNegative()) {
      throw new Unreadable(amount.toString(), "a cost of at least zero");
    }
    if (!parts.isEmpty() && !sum(amount.getCurrencyUnit(), parts).equals(amount)) {
      throw new IllegalArgumentException("parts of " + name + " sum to " + sum(amount.getCurrencyUnit(), parts) + ", wanted " + amount);
    }
  }

  /** Something that costs so much, reckoned so. */
  static CostLine of(String key, String name, String basis, Money amount) {
    return new CostLine(key, name, basis, Optional.empty(), amount, List.of());
  }

  /** So much yarn that costs so much. */
  static CostLine ofYarn(String key, String name, Length length, Money amount) {
    return new CostLine(key, name, "", Optional.of(length), amount, List.of());
  }

  /** All of these together. */
  static CostLine ofAll(String key, String name, CurrencyUnit currency, List<CostLine> parts) {
    return new CostLine(key, name, "", Optional.empty(), sum(currency, parts), parts);
  }

  /** All of these together, each of yarn. */
  static CostLine ofAllYarn(String key, String name, CurrencyUnit currency, List<CostLine> parts) {
    Length length = parts.stream().flatMap(part -> part.length().stream()).reduce(Length.ZERO, Length::plus);
    return new CostLine(key, name, "", Optional.of(length), sum(currency, parts), parts);
  }

  private static Money sum(CurrencyUnit currency, List<CostLine> parts) {
    return parts.stream().map(CostLine::amount).reduce(Money.zero(currency), Money::plus);
  }

  /** What it comes down to: itself, or what its parts come down to. */
  public Stream<CostLine> leaves() {
    return parts.isEmpty() ? Stream.of(this) : parts.stream().flatMap(CostLine::leaves);
  }

  /** The part with a key, where there is one. */
  public Optional<CostLine> part(String wanted) {
    return parts.stream().filter(part -> part.key.equals(wanted)).findFirst();
  }
}
