package hankbook.desktop;

import hankbook.cost.Charge;
import hankbook.cost.KeptPurchase;
import hankbook.cost.Purchase;
import hankbook.desktop.say.Say;
import hankbook.studio.Purchased;
import java.util.Comparator;
import java.util.stream.Stream;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;

/**
 * A purchase in the list; every text is made once.
 *
 * @param purchased as the ledger has it
 * @param number by which it is called for
 * @param date when it was bought
 * @param from whom
 * @param lines how many lines the bill has
 * @param total what was paid as the bill says it
 * @param landed the same in the home currency
 * @param state that it was taken back or corrected, or empty
 */
record PurchaseRow(Purchased purchased, int number, String date, String from, int lines, String total, String landed, String state) {
  static final Comparator<Purchased> NEWEST_FIRST =
      Comparator.comparing((Purchased purchased) -> purchased.kept().landed().purchase().date())
          .thenComparingInt(purchased -> purchased.kept().number())
          .reversed();

  static PurchaseRow of(Purchased purchased) {
    KeptPurchase kept = purchased.kept();
    Purchase purchase = kept.landed().purchase();
    String state = !kept.stands() ? Say.text("taken back") : kept.version() > 1 ? Say.text("corrected") : "";
    return new PurchaseRow(
        purchased, kept.number(), purchase.date().toString(), purchase.from(), purchase.lines().size(), total(purchase), Wording.money(kept.landed().total()), state);
  }

  /** What was paid in the currency of the bill, and what was paid at home beside it. */
  static String total(Purchase purchase) {
    Money bill = sum(purchase, purchase.currency()).plus(purchase.goods()).minus(purchase.discount().amount());
    String beside = Stream.of(purchase.carriage(), purchase.duty())
        .map(charge -> charge.amount().getCurrencyUnit())
        .filter(unit -> !unit.equals(purchase.currency()))
        .findFirst()
        .map(home -> " + " + Wording.money(sum(purchase, home)))
        .orElse("");
    return Wording.money(bill) + beside;
  }

  private static Money sum(Purchase purchase, CurrencyUnit unit) {
    return Money.total(unit, Stream.of(purchase.carriage(), purchase.duty()).map(Charge::amount).filter(amount -> amount.getCurrencyUnit().equals(unit)).toList());
  }

  boolean stands() {
    return purchased.kept().stands();
  }
}
