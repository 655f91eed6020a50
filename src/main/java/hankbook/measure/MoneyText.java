package hankbook.measure;

import java.util.regex.Pattern;
import org.joda.money.Money;

/** Amounts of money as they are written: the number, then the currency's three letters by ISO 4217. */
public final class MoneyText {
  private static final Pattern AMOUNT = Pattern.compile("\\d{1,9}(\\.\\d{1,3})?");
  private static final String WANTED = "an amount and its currency such as 24.50 EUR";

  private MoneyText() {}

  /**
   * Reads {@code 24.50 EUR}, an amount of at least zero.
   *
   * @throws Unreadable if it is none, or has more places than the currency
   */
  public static Money parse(String text) {
    String[] parts = text.strip().split("\\s+", -1);
    if (parts.length != 2 || !AMOUNT.matcher(parts[0]).matches()) {
      throw new Unreadable(text, WANTED);
    }
    try {
      return Money.parse(parts[1] + " " + parts[0]);
    } catch (IllegalArgumentException | ArithmeticException notMoney) {
      throw new Unreadable(text, WANTED);
    }
  }

  /** The form {@link #parse} reads back; an amount under zero begins with a minus. */
  public static String print(Money money) {
    return money.getAmount().toPlainString() + " " + money.getCurrencyUnit();
  }
}
