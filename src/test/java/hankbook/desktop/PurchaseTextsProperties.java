package hankbook.desktop;

import static org.assertj.core.api.Assertions.assertThat;

import hankbook.cost.Basis;
import hankbook.cost.Charge;
import hankbook.cost.ExchangeRate;
import hankbook.cost.Purchase;
import hankbook.cost.PurchaseLine;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.LongRange;
import net.jqwik.api.constraints.Size;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;

class PurchaseTextsProperties {
  private static final CurrencyUnit HOME = CurrencyUnit.EUR;
  private static final LocalDate DAY = LocalDate.of(2026, 3, 14);

  @Property(tries = 300, seed = "20261126")
  void aPurchaseThatIsTypedAsItStandsIsTheSamePurchase(
      @ForAll @Size(min = 1, max = 5) List<@LongRange(min = 0, max = 5_000_000) Long> prices, @ForAll @LongRange(min = 0, max = 99_999) long carriage,
      @ForAll @LongRange(min = 0, max = 99_999) long duty, @ForAll @IntRange(min = 0, max = 100) int discountPercent, @ForAll boolean foreign, @ForAll boolean dutyAtHome,
      @ForAll Basis basis) {
    CurrencyUnit bill = foreign ? CurrencyUnit.GBP : HOME;
    List<PurchaseLine> lines = new ArrayList<>();
    prices.forEach(price -> lines.add(new PurchaseLine("line " + lines.size(), Money.ofMinor(bill, price), List.of("S" + lines.size(), "T" + lines.size()))));
    long goods = prices.stream().mapToLong(Long::longValue).sum();
    Purchase purchase =
        new Purchase(
            DAY, "Harbour Mill", bill, lines, charge(bill, carriage, basis), charge(foreign && dutyAtHome && duty > 0 ? HOME : bill, duty, basis),
            charge(bill, goods * discountPercent / 100, basis), foreign ? Optional.of(new ExchangeRate(new BigDecimal("1.1765"), DAY)) : Optional.empty());
    PurchaseReading reading = new PurchaseReading(PurchaseTexts.of(purchase), HOME, true);
    assertThat(reading.whyNot()).isEmpty();
    assertThat(reading.purchase()).contains(purchase);
  }

  /** Nothing is shared by nothing. */
  private static Charge charge(CurrencyUnit currency, long minor, Basis basis) {
    return new Charge(Money.ofMinor(currency, minor), minor == 0 ? Basis.VALUE : basis);
  }
}
