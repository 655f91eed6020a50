package hankbook.studio;

import hankbook.cost.ExchangeRate;
import hankbook.cost.KeptPurchase;
import hankbook.cost.LandedPurchase;
import hankbook.cost.LandedSkein;
import hankbook.cost.Landing;
import hankbook.cost.Parcel;
import hankbook.cost.Purchase;
import hankbook.store.Session;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;

/** Writes down a purchase, and says of its skeins what they cost by it. */
final class EnterPurchase {
  private final Studio studio;
  private final Session session;

  EnterPurchase(Studio studio, Session session) {
    this.studio = studio;
    this.session = session;
  }

  /**
   * Enters the next version of a purchase, where it says anything new.
   *
   * @param earlier its version before; empty where it is the first
   * @throws NotDone if one of its skeins is not in the ledger or was paid for by another purchase, or its day is yet to come
   */
  Purchased as(int number, Purchase purchase, Optional<KeptPurchase> earlier, String reason) throws NotDone {
    Purchased entered = asItWouldStand(number, purchase, earlier, reason);
    LandedPurchase landed = entered.kept().landed();
    if (earlier.filter(kept -> kept.landed().equals(landed)).isEmpty()) {
      Stream<LandedSkein> dropped = earlier.stream().flatMap(kept -> kept.landed().skeins().stream()).filter(skein -> !purchase.skeins().contains(skein.skein()));
      dropped.forEach(skein -> say(skein.skein(), skein.before()));
      landed.skeins().forEach(skein -> say(skein.skein(), Optional.of(skein.cost())));
      session.purchases().keep(number, landed, true, Note.of(reason), studio.author(), studio.now());
    }
    return new Purchased(session.purchases().numbered(number).orElseThrow(), entered.parcel());
  }

  /**
   * The next version of a purchase as it would stand, were it entered; writes nothing. Where nothing else was paid it costs what it did, though its skeins
   * were measured since.
   *
   * @throws NotDone as {@link #as} does
   */
  Purchased asItWouldStand(int number, Purchase purchase, Optional<KeptPurchase> earlier, String reason) throws NotDone {
    refuseWhatIsYetToCome(purchase);
    Parcel parcel = ParcelOf.skeins(session, number, purchase.skeins());
    Optional<LandedPurchase> before = earlier.map(KeptPurchase::landed);
    LandedPurchase landed = before.flatMap(kept -> kept.saidAs(purchase)).orElseGet(() -> Landing.of(purchase, home(purchase, before), parcel, before(purchase, earlier)));
    int version = earlier.map(KeptPurchase::version).orElse(0) + 1;
    return new Purchased(new KeptPurchase(number, version, landed, true, Note.of(reason), studio.author(), studio.now()), parcel);
  }

  private void refuseWhatIsYetToCome(Purchase purchase) throws NotDone {
    List<LocalDate> days = Stream.concat(Stream.of(purchase.date()), purchase.rate().stream().map(ExchangeRate::day)).toList();
    Optional<LocalDate> late = days.stream().filter(day -> day.isAfter(studio.today())).findFirst();
    if (late.isPresent()) {
      throw NotDone.because("Yarn cannot have been paid on {0}, which is yet to come; give today or a day that is past.", late.get());
    }
  }

  /** A correction stays in the currency that the purchase was entered into, if it fits; where nothing was paid yet, a purchase without a rate decides it. */
  private CurrencyUnit home(Purchase purchase, Optional<LandedPurchase> before) {
    Optional<CurrencyUnit> own = before.map(LandedPurchase::home).filter(unit -> unit.equals(purchase.currency()) == purchase.rate().isEmpty());
    return own.or(() -> HomeCurrency.decided(session)).orElseGet(() -> purchase.rate().isEmpty() ? purchase.currency() : HomeCurrency.of(session));
  }

  /** What was said of each skein before its purchase was first entered. */
  private Map<String, Money> before(Purchase purchase, Optional<KeptPurchase> earlier) {
    Map<String, Optional<Money>> before = new HashMap<>();
    purchase.skeins().forEach(code -> before.put(code, session.skeins().find(code).orElseThrow().cost()));
    earlier.stream().flatMap(kept -> kept.landed().skeins().stream()).forEach(skein -> before.put(skein.skein(), skein.before()));
    Map<String, Money> known = new HashMap<>();
    before.forEach((code, cost) -> cost.ifPresent(money -> known.put(code, money)));
    return known;
  }

  private void say(String code, Optional<Money> cost) {
    session.skeins().describe(session.skeins().find(code).orElseThrow().withCost(cost), studio.author(), studio.now());
  }

  /** Says that a purchase does not stand, and of its skeins what was said before it. */
  void takeBack(KeptPurchase kept, String reason) {
    kept.landed().skeins().forEach(skein -> say(skein.skein(), skein.before()));
    session.purchases().keep(kept.number(), kept.landed(), false, Note.of(reason), studio.author(), studio.now());
  }
}
