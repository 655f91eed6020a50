package hankbook.desktop;

import hankbook.cost.Charge;
import hankbook.cost.ExchangeRate;
import hankbook.cost.Purchase;
import hankbook.cost.PurchaseLine;
import hankbook.measure.MoneyText;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;

/** A purchase as it would be typed. */
final class PurchaseTexts {
  private PurchaseTexts() {}

  static PurchaseTyped of(Purchase purchase) {
    CurrencyUnit bill = purchase.currency();
    Map<String, String> head = new LinkedHashMap<>();
    head.put("date", purchase.date().toString());
    head.put("from", purchase.from());
    head.put("currency", bill.getCode());
    head.put("rate", purchase.rate().map(ExchangeRate::text).orElse(""));
    head.put("rateDate", purchase.rate().map(rate -> rate.day().toString()).orElse(""));
    put(head, "carriage", purchase.carriage(), bill);
    put(head, "duty", purchase.duty(), bill);
    put(head, "discount", purchase.discount(), bill);
    List<PurchaseTyped.Line> lines = purchase.lines().stream().map(line -> line(line, bill)).toList();
    return new PurchaseTyped(head, lines);
  }

  private static PurchaseTyped.Line line(PurchaseLine line, CurrencyUnit bill) {
    return new PurchaseTyped.Line(line.words(), amount(line.price(), bill), line.skeins());
  }

  private static void put(Map<String, String> head, String key, Charge charge, CurrencyUnit bill) {
    head.put(key, charge.amount().isZero() ? "" : amount(charge.amount(), bill));
    head.put(PurchaseTyped.by(key), charge.amount().isZero() ? "" : charge.basis().words());
  }

  /** In the currency of the bill without saying so. */
  private static String amount(Money amount, CurrencyUnit bill) {
    return Optional.of(amount).filter(money -> money.getCurrencyUnit().equals(bill)).map(money -> money.getAmount().toPlainString()).orElseGet(() -> MoneyText.print(amount));
  }
}
