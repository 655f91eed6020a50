package hankbook.cost;

import hankbook.measure.Length;
import hankbook.measure.Phrase;
import java.util.List;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;
import java.util.Optional;

/** What is there of one skein and what was paid for it, in the order it is taken. */
final class SkeinWorth {
  private final CurrencyUnit currency;
  private final List<Worth> held;

  private SkeinWorth(CurrencyUnit currency, List<Worth> held) {
    this.currency = currency;
    this.held = held;
  }

  static SkeinWorth of(Costing costing, String code) {
    return new SkeinWorth(costing.currency(), costing.worths().getOrDefault(code, List.of()));
  }

  /** What so much of it cost; all of it where that is more than there is. Empty where that is not known in the currency. */
  Optional<Money> of(Length length) {
    if (whyUnknown().isPresent()) {
      return Optional.empty();
    }
    Money cost = Money.zero(currency);
    Length left = length;
    for (Worth worth : held) {
      Length taken = Length.min(left, worth.length());
      cost = cost.plus(left.compareTo(worth.length()) >= 0 ? worth.cost() : worth.of(taken));
      left = left.minus(taken);
    }
    return Optional.of(cost);
  }

  /** What all of it cost. */
  Money all() {
    return held.stream().map(Worth::cost).reduce(Money.zero(currency), Money::plus);
  }

  /** Why its cost is not known; empty where it is. */
  Optional<Phrase> whyUnknown() {
    if (held.isEmpty()) {
      return Optional.of(Phrase.of("what was paid for it is not known"));
    }
    return held.stream().map(worth -> worth.cost().getCurrencyUnit()).filter(other -> !other.equals(currency)).findFirst()
        .map(other -> Phrase.of("it was paid in {0}, and this is reckoned in {1}", other, currency));
  }
}
