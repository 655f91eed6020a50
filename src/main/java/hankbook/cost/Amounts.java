package hankbook.cost;

import org.joda.money.Money;

/** Amounts of money as they are written: {@code 24.50 EUR}, the form that a stock file has. */
public final class Amounts {
  private Amounts() {}

  /** The amount with its smallest coin, and its currency after it. */
  public static String text(Money amount) {
    return amount.getAmount().toPlainString() + " " + amount.getCurrencyUnit().getCode();
  }
}
