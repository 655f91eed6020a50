package hankbook.cost;

import static hankbook.cost.Bills.EUR;
import static org.assertj.core.api.Assertions.assertThat;

import hankbook.measure.Length;
import hankbook.measure.Mass;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.BigRange;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.LongRange;
import net.jqwik.api.constraints.Scale;
import org.apache.commons.numbers.fraction.BigFraction;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;

/** Whatever the numbers are, no coin appears or vanishes. */
class LandingProperties {
  private static final List<CurrencyUnit> CURRENCIES = List.of(EUR, CurrencyUnit.of("SEK"), CurrencyUnit.JPY, CurrencyUnit.of("KWD"));

  @Property
  void thePartsOfAPurchaseSumToItToTheCoin(
      @ForAll Random random, @ForAll @IntRange(min = 1, max = 7) int lines, @ForAll @LongRange(min = 1, max = 5_000_000) long most,
      @ForAll @BigRange(min = "0.000001", max = "2") @Scale(6) BigDecimal rate) {
    CurrencyUnit currency = CURRENCIES.get(random.nextInt(CURRENCIES.size()));
    Map<String, Received> known = new HashMap<>();
    List<PurchaseLine> bought = new ArrayList<>();
    for (int i = 0; i < lines; i++) {
      bought.add(line(random, i, Money.ofMinor(currency, random.nextLong(most)), known));
    }
    Optional<ExchangeRate> turned = currency.equals(EUR) ? Optional.empty() : Optional.of(new ExchangeRate(rate, Bills.DAY));
    Money goods = Money.total(bought.stream().map(PurchaseLine::price).toList());
    Charge carriage = charge(random, turned.isPresent() && random.nextBoolean() ? EUR : currency, most);
    Charge duty = charge(random, currency, most);
    Charge discount = Bills.byValue(Money.ofMinor(currency, random.nextLong(goods.getAmountMinorLong() + 1)));
    Purchase purchase = new Purchase(Bills.DAY, "", currency, bought, carriage, duty, discount, turned);
    LandedPurchase landed = Landing.of(purchase, EUR, new Parcel(known), Map.of());

    assertThat(Money.total(landed.lines().stream().map(LandedLine::carriage).toList())).isEqualTo(carriage.amount());
    assertThat(Money.total(landed.lines().stream().map(LandedLine::duty).toList())).isEqualTo(duty.amount());
    assertThat(Money.total(landed.lines().stream().map(LandedLine::discount).toList())).isEqualTo(discount.amount());
    assertThat(Money.total(landed.skeins().stream().map(LandedSkein::cost).toList())).isEqualTo(expected(purchase)).isEqualTo(landed.total());
    assertThat(landed.skeins()).allMatch(skein -> !skein.cost().isNegative()).extracting(LandedSkein::skein).isEqualTo(purchase.skeins());
  }

  /** What was paid abroad turned once by plain decimals, and what was paid at home. */
  private static Money expected(Purchase purchase) {
    BigDecimal abroad = purchase.goods().getAmount().subtract(purchase.discount().amount().getAmount());
    BigDecimal atHome = BigDecimal.ZERO;
    for (Charge charge : List.of(purchase.carriage(), purchase.duty())) {
      boolean paidAbroad = charge.amount().getCurrencyUnit().equals(purchase.currency());
      abroad = paidAbroad ? abroad.add(charge.amount().getAmount()) : abroad;
      atHome = paidAbroad ? atHome : atHome.add(charge.amount().getAmount());
    }
    BigDecimal turned = purchase.rate().map(ExchangeRate::home).orElse(BigDecimal.ONE).multiply(abroad).setScale(2, RoundingMode.HALF_UP);
    return Money.of(EUR, turned.add(atHome));
  }

  private static Charge charge(Random random, CurrencyUnit currency, long most) {
    return new Charge(Money.ofMinor(currency, random.nextLong(most)), random.nextBoolean() ? Basis.VALUE : Basis.MASS);
  }

  private static PurchaseLine line(Random random, int number, Money price, Map<String, Received> known) {
    List<String> skeins = new ArrayList<>();
    for (int i = 0; i <= random.nextInt(5); i++) {
      String code = "L" + number + "-" + i;
      skeins.add(code);
      Optional<Length> label = random.nextInt(4) == 0 ? Optional.empty() : Optional.of(new Length(random.nextLong(1, 20_000_000)));
      Optional<Length> length = random.nextInt(4) == 0 ? Optional.empty() : Optional.of(new Length(random.nextLong(1, 20_000_000)));
      known.put(code, new Received(label, length, Optional.of(new Mass(random.nextLong(1, 2_000_000)))));
    }
    return new PurchaseLine("line " + number, price, skeins);
  }

  @Property
  void partsLieWithinACoinOfTheirExactShare(@ForAll @LongRange(min = 0, max = 1_000_000_000_000L) long whole, @ForAll @IntRange(min = 1, max = 9) int count, @ForAll Random random) {
    List<Long> weights = random.longs(count, 1, 1_000_000).boxed().toList();
    long sum = weights.stream().mapToLong(Long::longValue).sum();
    List<Money> parts = SharedOut.of(Money.ofMinor(EUR, whole), weights.stream().map(BigFraction::of).toList());
    for (int i = 0; i < count; i++) {
      BigDecimal exact = BigDecimal.valueOf(whole).multiply(BigDecimal.valueOf(weights.get(i))).divide(BigDecimal.valueOf(sum), 12, RoundingMode.HALF_UP);
      assertThat(BigDecimal.valueOf(parts.get(i).getAmountMinorLong()).subtract(exact).abs()).isLessThan(BigDecimal.ONE);
    }
    assertThat(Money.total(parts)).isEqualTo(Money.ofMinor(EUR, whole));
  }
}
