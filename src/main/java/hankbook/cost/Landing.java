package hankbook.cost;

import hankbook.measure.Exact;
import hankbook.measure.MoneyText;
import hankbook.measure.Phrase;
import hankbook.measure.Unreadable;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;

/**
 * Works out what each skein of a purchase cost with all that was paid to have it. A foreign total is turned into the home currency once, and that is shared
 * out; so the parts sum to the whole to the smallest coin, whatever the numbers are.
 */
public final class Landing {
  private final Purchase purchase;
  private final CurrencyUnit home;
  private final Parcel parcel;

  private Landing(Purchase purchase, CurrencyUnit home, Parcel parcel) {
    this.purchase = purchase;
    this.home = home;
    this.parcel = parcel;
  }

  /**
   * A purchase as it was paid and shared out.
   *
   * @param home the currency in which the ledger reckons
   * @param parcel what is known of its skeins
   * @param before what was said to be paid for skeins before, by their codes
   * @throws Unreadable if it is in a foreign currency without a rate or in the home currency with one, a charge is in a third currency, a mass to share by is
   *     not known, or a discount takes more off a line than that costs
   */
  public static LandedPurchase of(Purchase purchase, CurrencyUnit home, Parcel parcel, Map<String, Money> before) {
    Landing landing = new Landing(purchase, home, parcel);
    landing.refuseWrongCurrencies();
    return landing.landed(before);
  }

  private void refuseWrongCurrencies() {
    boolean foreign = !purchase.currency().equals(home);
    if (foreign && purchase.rate().isEmpty()) {
      throw new Unreadable("", Phrase.of("rate and rateDate: what 1 {0} was worth on a day in {1}, the currency of this ledger", purchase.currency(), home));
    }
    if (!foreign && purchase.rate().isPresent()) {
      throw new Unreadable(purchase.rate().get().text(), Phrase.of("no rate, since {0} is the currency of this ledger", home));
    }
    for (Charge charge : List.of(purchase.carriage(), purchase.duty())) {
      if (!isInPurchaseCurrency(charge.amount()) && !charge.amount().getCurrencyUnit().equals(home)) {
        throw new Unreadable(MoneyText.print(charge.amount()), Phrase.of("an amount in {0} or {1}", purchase.currency(), home));
      }
    }
  }

  private boolean isInPurchaseCurrency(Money amount) {
    return amount.getCurrencyUnit().equals(purchase.currency());
  }

  private LandedPurchase landed(Map<String, Money> before) {
    List<Money> carriage = shared(purchase.carriage());
    List<Money> duty = shared(purchase.duty());
    List<Money> discount = shared(purchase.discount());
    List<Money> landed = atHome(carriage, duty, discount);
    List<LandedLine> lines = new ArrayList<>();
    for (int i = 0; i < purchase.lines().size(); i++) {
      PurchaseLine line = purchase.lines().get(i);
      List<Money> costs = SharedOut.of(landed.get(i), parcel.weights(line.skeins()));
      List<LandedSkein> skeins = new ArrayList<>();
      for (int j = 0; j < costs.size(); j++) {
        String code = line.skeins().get(j);
        skeins.add(new LandedSkein(code, costs.get(j), Optional.ofNullable(before.get(code))));
      }
      lines.add(new LandedLine(line, carriage.get(i), duty.get(i), discount.get(i), skeins));
    }
    return new LandedPurchase(purchase, lines);
  }

  private List<Money> shared(Charge charge) {
    return charge.amount().isZero() ? purchase.lines().stream().map(_ -> charge.amount()).toList() : SharedOut.of(charge.amount(), weights(charge.basis()));
  }

  private List<BigFraction> weights(Basis basis) {
    return switch (basis) {
      case VALUE -> purchase.lines().stream().map(line -> Exact.of(line.price().getAmount())).toList();
      case MASS -> purchase.lines().stream().map(line -> parcel.massToShareBy(line.skeins())).toList();
    };
  }

  /** What each line cost at home: its part of the foreign total, turned once, and what was paid at home for it. */
  private List<Money> atHome(List<Money> carriage, List<Money> duty, List<Money> discount) {
    List<Money> bought = new ArrayList<>();
    List<Money> paidAtHome = new ArrayList<>();
    for (int i = 0; i < purchase.lines().size(); i++) {
      PurchaseLine line = purchase.lines().get(i);
      List<Money> charges = List.of(carriage.get(i), duty.get(i));
      Money cost = line.price().plus(charges.stream().filter(this::isInPurchaseCurrency).toList());
      if (discount.get(i).isGreaterThan(cost)) {
        throw new Unreadable(MoneyText.print(discount.get(i)), Phrase.of("a discount of which no line bears more than it costs; '{0}' costs {1}", line.words(), MoneyText.print(cost)));
      }
      bought.add(cost.minus(discount.get(i)));
      paidAtHome.add(Money.total(home, charges.stream().filter(charge -> !isInPurchaseCurrency(charge)).toList()));
    }
    List<Money> turned = turned(bought);
    List<Money> landed = new ArrayList<>();
    for (int i = 0; i < turned.size(); i++) {
      landed.add(turned.get(i).plus(paidAtHome.get(i)));
    }
    return landed;
  }

  private List<Money> turned(List<Money> bought) {
    if (purchase.rate().isEmpty()) {
      return bought;
    }
    Money total = purchase.rate().get().turned(Money.total(bought), home);
    return SharedOut.of(total, bought.stream().map(line -> Exact.of(line.getAmount())).toList());
  }
}
