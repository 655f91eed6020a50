package hankbook.studio;

import hankbook.cost.LandedSkein;
import hankbook.measure.MoneyText;
import hankbook.measure.Phrase;
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
  Optional<Phrase> wanted(Optional<Skein> known, Optional<Money> said) {
    if (said.isEmpty() || known.flatMap(Skein::cost).equals(said)) {
      return Optional.empty();
    }
    if (known.filter(skein -> session.balances().woundOnly().contains(skein.code())).isPresent()) {
      return Optional.of(Phrase.of("none, since it was wound off another skein, whose cost came with it; say what was paid for that one"));
    }
    CurrencyUnit currency = home.orElse(said.get().getCurrencyUnit());
    home = Optional.of(currency);
    if (!said.get().getCurrencyUnit().equals(currency)) {
      return Optional.of(
          Phrase.of("an amount in {0}, the currency of this ledger; leave it out, and enter what was paid and its rate with purchase add", currency));
    }
    return known.flatMap(skein -> session.purchases().thatPaidFor(skein.code())).map(paid ->
        Phrase.of("the cost that purchase {0} gives it; to change that, purchase correct {0}", paid.number()));
  }

  /** A skein that comes: what was said of its cost before its purchase was entered says nothing new when it is read once more. */
  static Arrival ruled(Session session, Skein known, Skein comes) {
    Stream<LandedSkein> paid = session.purchases().thatPaidFor(known.code()).stream().flatMap(kept -> kept.landed().skeins().stream());
    boolean saidBefore = paid.anyMatch(skein -> skein.skein().equals(known.code()) && skein.before().isPresent() && skein.before().equals(comes.cost()));
    return new Arrival(known, saidBefore ? comes.withCost(known.cost()) : comes);
  }

  /** @throws NotDone if a cost cannot be said of a skein of the ledger */
  void refuse(String code, Optional<Skein> known, Optional<Money> said) throws NotDone {
    Optional<Phrase> wanted = wanted(known, said);
    if (wanted.isPresent()) {
      throw NotDone.because("The cost of {0}: found '{1}', wanted {2}. Nothing was changed.", code,
          new Phrase.As(said.orElseThrow(), MoneyText.print(said.orElseThrow())), wanted.get());
    }
  }

  /** A fault of a row of a file, without where the row stands. */
  Optional<String> fault(Optional<Skein> known, Optional<Money> said) {
    return wanted(known, said).map(wanted -> "cost: found '" + new Phrase.As(said.orElseThrow(), MoneyText.print(said.orElseThrow())) + "', wanted " + wanted);
  }
}
