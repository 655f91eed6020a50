package hankbook.studio;

import hankbook.cost.LandedSkein;
import hankbook.measure.MoneyText;
import hankbook.store.Session;
import hankbook.yarn.Skein;
import java.util.Optional;
import java.util.stream.Stream;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;

/** What may be said of the cost of skeins outside a purchase: an amount in the currency of the ledger, where no purchase says it. */
final class CostSaid {
  private final Session session;
  private Optional<CurrencyUnit> home;

  CostSaid(Session session) {
    this.session = session;
    home = HomeCurrency.decided(session);
  }

  /**
   * What is wanted in the place of a cost that cannot be taken. Where nothing was paid yet, the first amount decides the currency of the rest.
   *
   * @param known the skein as the ledger has it
   */
  Optional<String> wanted(Optional<Skein> known, Optional<Money> said) {
    if (said.isEmpty() || known.flatMap(Skein::cost).equals(said)) {
      return Optional.empty();
    }
    if (known.filter(skein -> session.balances().woundOnly().contains(skein.code())).isPresent()) {
      return Optional.of("none, since it was wound off another skein, whose cost came with it; say what was paid for that one");
    }
    CurrencyUnit currency = home.orElse(said.get().getCurrencyUnit());
    home = Optional.of(currency);
    if (!said.get().getCurrencyUnit().equals(currency)) {
      return Optional.of("an amount in " + currency + ", the currency of this ledger; leave it out, and enter what was paid and its rate with purchase add");
    }
    return known.flatMap(skein -> session.purchases().thatPaidFor(skein.code())).map(paid ->
        "the cost that purchase " + paid.number() + " gives it; to change that, purchase correct " + paid.number());
  }

  /** A skein that comes: what was said of its cost before its purchase was entered says nothing new when it is read once more. */
  static Arrival ruled(Session session, Skein known, Skein comes) {
    Stream<LandedSkein> paid = session.purchases().thatPaidFor(known.code()).stream().flatMap(kept -> kept.landed().skeins().stream());
    boolean saidBefore = paid.anyMatch(skein -> skein.skein().equals(known.code()) && skein.before().isPresent() && skein.before().equals(comes.cost()));
    return new Arrival(known, saidBefore ? comes.withCost(known.cost()) : comes);
  }

  /** @throws NotDone if a cost cannot be said of a skein of the ledger */
  void refuse(String code, Optional<Skein> known, Optional<Money> said) throws NotDone {
    Optional<String> wanted = wanted(known, said);
    if (wanted.isPresent()) {
      throw NotDone.because("The cost of " + code + ": found '" + MoneyText.print(said.orElseThrow()) + "', wanted " + wanted.get() + ". Nothing was changed.");
    }
  }

  /** A fault of a row of a file, without where the row stands. */
  Optional<String> fault(Optional<Skein> known, Optional<Money> said) {
    return wanted(known, said).map(wanted -> "cost: found '" + MoneyText.print(said.orElseThrow()) + "', wanted " + wanted);
  }
}
