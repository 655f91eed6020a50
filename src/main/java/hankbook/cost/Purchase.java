package hankbook.cost;

import hankbook.measure.MoneyText;
import hankbook.measure.Phrase;
import hankbook.measure.Unreadable;
import hankbook.yarn.OneLine;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;

/**
 * What was paid at one time in one place, as the bill says: what was paid is kept, and what a skein, a metre or a kilogram cost is derived from it.
 *
 * @param date when it was bought
 * @param from whom, in free words; may be empty
 * @param currency in which the lines are priced
 * @param lines at least one; no skein is in two of them
 * @param carriage in the currency of the lines, or where there is a rate in the home currency
 * @param duty likewise
 * @param discount on the lines' prices, at most their sum, in their currency
 * @param rate by which a foreign currency is turned into the home currency; empty where the currency is that
 */
public record Purchase(
    LocalDate date, String from, CurrencyUnit currency, List<PurchaseLine> lines, Charge carriage, Charge duty, Charge discount, Optional<ExchangeRate> rate) {
  /** More than any studio pays at once, and small enough that many such amounts still add up exactly. */
  static final BigDecimal MOST = BigDecimal.valueOf(1_000_000_000);

  public Purchase {
    from = OneLine.of(from);
    lines = List.copyOf(lines);
    if (lines.isEmpty()) {
      throw new Unreadable("", "at least one line");
    }
    Stream.concat(lines.stream().map(PurchaseLine::price), Stream.of(discount.amount())).forEach(amount -> refuseOther(amount, currency));
    if (rate.isEmpty()) {
      refuseOther(carriage.amount(), currency);
      refuseOther(duty.amount(), currency);
    }
    Stream.of(goods(lines, currency), carriage.amount(), duty.amount()).forEach(Purchase::refuseTooMuch);
    if (discount.amount().isGreaterThan(goods(lines, currency))) {
      throw new Unreadable(MoneyText.print(discount.amount()), Phrase.of("a discount of at most {0}, which is what the lines cost", MoneyText.print(goods(lines, currency))));
    }
    refuseSkeinsPaidTwice(lines);
  }

  /** What the lines cost together, before what was paid or taken off for all of them. */
  public Money goods() {
    return goods(lines, currency);
  }

  /** The codes of the skeins it paid for, line by line. */
  public List<String> skeins() {
    return lines.stream().flatMap(line -> line.skeins().stream()).toList();
  }

  /** Whether the same was paid for the same skeins, whatever it is called, of whom and when it was bought. */
  boolean paysAlike(Purchase other) {
    return currency.equals(other.currency)
        && prices().equals(other.prices())
        && carriage.equals(other.carriage)
        && duty.equals(other.duty)
        && discount.equals(other.discount)
        && rate.map(ExchangeRate::exact).equals(other.rate.map(ExchangeRate::exact));
  }

  private List<Map.Entry<Money, List<String>>> prices() {
    return lines.stream().map(line -> Map.entry(line.price(), line.skeins())).toList();
  }

  private static Money goods(List<PurchaseLine> lines, CurrencyUnit currency) {
    return Money.total(currency, lines.stream().map(PurchaseLine::price).toList());
  }

  private static void refuseOther(Money amount, CurrencyUnit currency) {
    if (!amount.getCurrencyUnit().equals(currency)) {
      throw new Unreadable(MoneyText.print(amount), Phrase.of("an amount in {0}, the currency of the purchase", currency));
    }
  }

  private static void refuseTooMuch(Money amount) {
    if (amount.getAmount().compareTo(MOST) > 0) {
      throw new Unreadable(MoneyText.print(amount), Phrase.of("an amount of at most {0}", MOST.toPlainString()));
    }
  }

  private static void refuseSkeinsPaidTwice(List<PurchaseLine> lines) {
    Set<String> before = new HashSet<>();
    for (PurchaseLine line : lines) {
      for (String skein : line.skeins()) {
        if (!before.add(skein)) {
          throw new Unreadable(skein, "each skein in one line, since it is paid for once");
        }
      }
    }
  }
}
