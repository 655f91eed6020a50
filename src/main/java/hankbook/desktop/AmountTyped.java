package hankbook.desktop;

import hankbook.measure.Arithmetic;
import hankbook.measure.Exact;
import hankbook.measure.MoneyText;
import hankbook.measure.Phrase;
import hankbook.measure.Unreadable;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Locale;
import org.apache.commons.numbers.fraction.BigFraction;
import org.joda.money.CurrencyUnit;
import org.joda.money.IllegalCurrencyException;
import org.joda.money.Money;

/** Amounts of money as they are typed: with a currency, without one in that of the bill, or as arithmetic such as {@code 3 x 19.80}. */
final class AmountTyped {
  private static final BigFraction MOST = BigFraction.of(1_000_000_000);

  private AmountTyped() {}

  /**
   * Reads an amount of at least zero.
   *
   * @param bill the currency where none is typed
   * @throws Unreadable if it is none, or not whole in the smallest coin
   */
  static Money read(String text, CurrencyUnit bill) {
    String[] words = text.strip().split("\\s+(?=\\p{L}{3}$)", 2);
    CurrencyUnit currency = words.length == 2 ? currency(words[1]) : bill;
    try {
      return MoneyText.parse(words[0] + " " + currency);
    } catch (Unreadable notPlain) {
      return reckoned(text, words[0], currency);
    }
  }

  private static Money reckoned(String text, String sum, CurrencyUnit currency) {
    BigFraction exact = number(text, sum, currency);
    BigDecimal amount = exact.compareTo(MOST) > 0 ? BigDecimal.ZERO : Exact.decimal(exact, currency.getDecimalPlaces(), RoundingMode.HALF_UP);
    if (!Exact.of(amount).equals(exact)) {
      throw wanted(text, currency);
    }
    return Money.of(currency, amount);
  }

  private static BigFraction number(String text, String sum, CurrencyUnit currency) {
    try {
      return Arithmetic.number(sum);
    } catch (Unreadable noNumber) {
      throw wanted(text, currency);
    }
  }

  private static Unreadable wanted(String text, CurrencyUnit currency) {
    return new Unreadable(text, Phrase.of("an amount such as {0}", currency.getDecimalPlaces() == 0 ? "60 or 3 x 20" : "59.40 or 3 x 19.80"));
  }

  /**
   * Reads the three letters of a currency.
   *
   * @throws Unreadable if there is none of those letters
   */
  static CurrencyUnit currency(String text) {
    try {
      return CurrencyUnit.of(text.strip().toUpperCase(Locale.ROOT));
    } catch (IllegalCurrencyException unknown) {
      throw new Unreadable(text, "a currency by its three letters such as EUR");
    }
  }
}
