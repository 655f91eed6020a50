package hankbook.cost;

import hankbook.measure.Length;
import hankbook.measure.Mass;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;

/** Short ways to write bills of an invented studio. */
final class Bills {
  static final LocalDate DAY = LocalDate.of(2026, 3, 14);
  static final CurrencyUnit EUR = CurrencyUnit.EUR;
  static final CurrencyUnit SEK = CurrencyUnit.of("SEK");

  private Bills() {}

  static Money eur(String amount) {
    return Money.of(EUR, new BigDecimal(amount));
  }

  static Money sek(String amount) {
    return Money.of(SEK, new BigDecimal(amount));
  }

  static Charge byValue(Money amount) {
    return new Charge(amount, Basis.VALUE);
  }

  static Charge byMass(Money amount) {
    return new Charge(amount, Basis.MASS);
  }

  static PurchaseLine line(String words, Money price, String... skeins) {
    return new PurchaseLine(words, price, List.of(skeins));
  }

  static Purchase bill(Charge carriage, Charge duty, Charge discount, PurchaseLine... lines) {
    return new Purchase(DAY, "the spring fair", EUR, List.of(lines), carriage, duty, discount, Optional.empty());
  }

  static Purchase plain(PurchaseLine... lines) {
    return bill(byValue(eur("0")), byValue(eur("0")), byValue(eur("0")), lines);
  }

  static Purchase foreign(String rate, Charge carriage, Charge duty, PurchaseLine... lines) {
    return new Purchase(DAY, "a mill abroad", SEK, List.of(lines), carriage, duty, byValue(sek("0")), Optional.of(ExchangeRate.parse(rate, DAY)));
  }

  /** Skeins of so many grams, nothing else being known of them. */
  static Parcel ofGrams(Map<String, Integer> grams) {
    Map<String, Received> skeins = new HashMap<>();
    grams.forEach((skein, mass) -> skeins.put(skein, new Received(Optional.empty(), Optional.empty(), Optional.of(Mass.grams(mass)))));
    return new Parcel(skeins);
  }

  static Received ofMetres(int label, int came) {
    return new Received(Optional.of(Length.metres(label)), Optional.of(Length.metres(came)), Optional.empty());
  }

  static LandedPurchase landed(Purchase purchase, Parcel parcel) {
    return Landing.of(purchase, EUR, parcel, Map.of());
  }
}
