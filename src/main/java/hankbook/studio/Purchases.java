package hankbook.studio;

import hankbook.cost.KeptPurchase;
import hankbook.cost.Landing;
import hankbook.cost.Purchase;
import hankbook.exchange.BadInput;
import hankbook.exchange.PurchaseFile;
import hankbook.measure.Unreadable;
import hankbook.store.Session;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.joda.money.CurrencyUnit;

/**
 * What was paid for yarn, with its carriage, duty and discount. A purchase says what its skeins cost, to every reader of that; whatever was ever said of it
 * stays in the ledger.
 */
public final class Purchases {
  private final Studio studio;

  public Purchases(Studio studio) {
    this.studio = studio;
  }

  /** Every purchase by number, also those that were taken back. */
  public List<Purchased> all() {
    return studio.read(session -> session.purchases().all().stream().map(kept -> ParcelOf.purchased(session, kept)).toList());
  }

  /**
   * The purchase with a number.
   *
   * @throws NotDone if there is none
   */
  public Purchased numbered(int number) throws NotDone {
    return studio.<Optional<Purchased>>read(session -> session.purchases().numbered(number).map(kept -> ParcelOf.purchased(session, kept)))
        .orElseThrow(() -> unknown(number));
  }

  /** The purchase that stands and paid for a skein. */
  public Optional<Purchased> thatPaidFor(String skein) {
    return studio.read(session -> session.purchases().thatPaidFor(skein).map(kept -> ParcelOf.purchased(session, kept)));
  }

  /** The currency in which the ledger reckons. */
  public CurrencyUnit homeCurrency() {
    return studio.read(HomeCurrency::of);
  }

  /** It where a setting or what was paid decides it; before that, the first purchase will. */
  public Optional<CurrencyUnit> decidedCurrency() {
    return studio.read(HomeCurrency::decided);
  }

  /**
   * A purchase as it would stand, were it entered now; writes nothing.
   *
   * @param corrected the number of the purchase that it would correct; empty where it would be another one
   * @throws NotDone as {@link #add} and {@link #correct} do
   * @throws Unreadable if it cannot be shared out as it says, see {@link Landing}
   */
  public Purchased tried(OptionalInt corrected, Purchase purchase) throws NotDone {
    return studio.tried(session -> {
      Optional<KeptPurchase> earlier = corrected.isPresent() ? Optional.of(standing(session, corrected.getAsInt())) : Optional.empty();
      return new EnterPurchase(studio, session).asItWouldStand(corrected.orElseGet(() -> session.purchases().next()), purchase, earlier, "");
    });
  }

  /**
   * Enters a purchase; one that stands just so already is left as it is.
   *
   * @throws NotDone if one of its skeins is not in the ledger or was paid for by another purchase, or its day is yet to come
   * @throws Unreadable if it cannot be shared out as it says, see {@link Landing}
   */
  public Purchased add(Purchase purchase) throws NotDone {
    return studio.write(session -> {
      Optional<KeptPurchase> there = session.purchases().thatPaidFor(purchase.skeins().getFirst()).filter(kept -> kept.landed().purchase().equals(purchase));
      return there.isPresent() ? ParcelOf.purchased(session, there.get()) : new EnterPurchase(studio, session).as(session.purchases().next(), purchase, Optional.empty(), "");
    });
  }

  /**
   * Enters the purchase of a file.
   *
   * @param name the file's, for messages
   * @throws BadInput naming what cannot be read or shared out
   * @throws NotDone as {@link #add} does
   */
  public Purchased add(String name, String text) throws BadInput, NotDone {
    Purchase purchase = PurchaseFile.read(name, text);
    return of(name, () -> add(purchase));
  }

  /**
   * Says a purchase anew; what was said before is kept, and skeins that are no longer in it cost again what was said before it.
   *
   * @param reason why; may be empty
   * @throws NotDone as {@link #add} does, and if there is none of this number or it was taken back
   */
  public Purchased correct(int number, Purchase purchase, String reason) throws NotDone {
    return studio.write(session -> new EnterPurchase(studio, session).as(number, purchase, Optional.of(standing(session, number)), reason));
  }

  /**
   * Says a purchase anew, unless someone else did so meanwhile.
   *
   * @param seen the version that was looked at
   * @throws NotDone as {@link #correct(int, Purchase, String)} does, and if another version is the newest
   */
  public Purchased correct(int number, Purchase purchase, String reason, int seen) throws NotDone {
    return studio.write(session -> {
      KeptPurchase standing = standing(session, number);
      if (standing.version() != seen) {
        throw NotDone.because("Purchase {0} was corrected by {1} meanwhile; look at it again.", number, standing.author());
      }
      return new EnterPurchase(studio, session).as(number, purchase, Optional.of(standing), reason);
    });
  }

  /**
   * Says a purchase anew as a file has it.
   *
   * @throws BadInput naming what cannot be read or shared out
   * @throws NotDone as {@link #correct} does
   */
  public Purchased correct(int number, String name, String text, String reason) throws BadInput, NotDone {
    Purchase purchase = PurchaseFile.read(name, text);
    return of(name, () -> correct(number, purchase, reason));
  }

  /**
   * Takes a purchase back: its skeins cost again what was said before it.
   *
   * @param reason not blank
   * @throws NotDone if there is none of this number, or it was taken back before
   */
  public Purchased takeBack(int number, String reason) throws NotDone {
    if (reason.isBlank()) {
      throw NotDone.because("Say why the purchase is taken back; the ledger keeps the reason.");
    }
    return studio.write(session -> {
      new EnterPurchase(studio, session).takeBack(standing(session, number), reason);
      return ParcelOf.purchased(session, session.purchases().numbered(number).orElseThrow());
    });
  }

  private static KeptPurchase standing(Session session, int number) throws NotDone {
    KeptPurchase kept = session.purchases().numbered(number).orElseThrow(() -> unknown(number));
    if (!kept.stands()) {
      throw NotDone.because("Purchase {0} was taken back; enter it anew with purchase add.", number);
    }
    return kept;
  }

  private static NotDone unknown(int number) {
    return NotDone.because("There is no purchase {0}; purchase list shows those there are.", number);
  }

  private interface Entering {
    Purchased run() throws NotDone;
  }

  private static Purchased of(String name, Entering entering) throws BadInput, NotDone {
    try {
      return entering.run();
    } catch (Unreadable unreadable) {
      throw new BadInput(name + ": " + unreadable.getMessage());
    }
  }
}
