package hankbook.cost;

import hankbook.measure.Exact;
import hankbook.measure.Phrase;
import hankbook.measure.Unreadable;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.LocalDate;
import java.util.regex.Pattern;
import org.apache.commons.numbers.fraction.BigFraction;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;

/**
 * What one whole unit of a foreign currency was worth in the home currency on a day.
 *
 * @param home how much home money one foreign unit is, over zero and at most a million, with at most twelve decimals, as it was written
 * @param day of which it is
 */
public record ExchangeRate(BigDecimal home, LocalDate day) {
  private static final String WANTED = "how much home money one foreign unit is, such as 0.0884: over zero, at most a million, with at most 12 decimals";
  private static final Pattern WRITTEN = Pattern.compile("\\d{1,7}(\\.\\d{1,12})?");
  private static final BigDecimal MOST = BigDecimal.valueOf(1_000_000);

  public ExchangeRate {
    if (home.signum() <= 0 || home.compareTo(MOST) > 0 || home.scale() > 12 || home.scale() < 0) {
      throw new Unreadable(home.toPlainString(), WANTED);
    }
  }

  /**
   * Reads a rate as a decimal number.
   *
   * @throws Unreadable if it is none, or out of range
   */
  public static ExchangeRate parse(String text, LocalDate day) {
    if (!WRITTEN.matcher(text.strip()).matches()) {
      throw new Unreadable(text, WANTED);
    }
    return new ExchangeRate(new BigDecimal(text.strip()), day);
  }

  /**
   * A foreign amount in home money, to the nearest smallest coin; half a coin is rounded up.
   *
   * @param foreign at least zero
   * @throws Unreadable if it makes more than a ledger holds
   */
  public Money turned(Money foreign, CurrencyUnit currency) {
    BigFraction product = Exact.of(foreign.getAmount()).multiply(exact());
    BigDecimal rounded = Exact.decimal(product, currency.getDecimalPlaces(), RoundingMode.HALF_UP);
    if (rounded.compareTo(Purchase.MOST) > 0) {
      throw new Unreadable(rounded.toPlainString() + " " + currency, Phrase.of("a purchase of at most {0}", Purchase.MOST.toPlainString()));
    }
    return Money.of(currency, rounded);
  }

  /** However it is written. */
  BigFraction exact() {
    return Exact.of(home);
  }

  /** As it was written. */
  public String text() {
    return home.toPlainString();
  }
}
