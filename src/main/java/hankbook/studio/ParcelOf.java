package hankbook.studio;

import hankbook.cost.KeptPurchase;
import hankbook.cost.Parcel;
import hankbook.cost.Received;
import hankbook.ledger.Holding;
import hankbook.ledger.Place;
import hankbook.measure.Length;
import hankbook.store.Session;
import hankbook.yarn.Skein;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Asks the ledger for the skeins that a purchase paid for, as they came. */
final class ParcelOf {
  private ParcelOf() {}

  static Purchased purchased(Session session, KeptPurchase kept) {
    Map<String, Received> received = new HashMap<>();
    kept.landed().purchase().skeins().forEach(code -> received.put(code, received(session, session.skeins().find(code).orElseThrow())));
    return new Purchased(kept, new Parcel(received));
  }

  /**
   * The skeins of a purchase that is to be entered.
   *
   * @param number of the purchase
   * @throws NotDone if one of them is not in the ledger, or another purchase that stands paid for it
   */
  static Parcel skeins(Session session, int number, List<String> codes) throws NotDone {
    Map<String, Received> received = new HashMap<>();
    for (String code : codes) {
      Skein skein = session.skeins().find(code)
          .orElseThrow(() -> NotDone.because("There is no skein {0} in the ledger; receive it or put it on order first. Nothing was changed.", code));
      if (session.balances().woundOnly().contains(code)) {
        throw NotDone.because("{0} was wound off another skein and costs what that cost; enter what was paid for that one. Nothing was changed.", code);
      }
      Optional<KeptPurchase> other = session.purchases().thatPaidFor(code).filter(kept -> kept.number() != number);
      if (other.isPresent()) {
        throw NotDone.because("{0} was paid for in purchase {1} already, and is paid for once; correct that one, or take it back. Nothing was changed.", code, other.get().number());
      }
      received.put(code, received(session, skein));
    }
    return new Parcel(received);
  }

  private static Received received(Session session, Skein skein) {
    Length entered = session.balances().ofSkein(skein.code()).at(new Holding(skein.code(), new Place.Maker())).negated();
    return Received.of(Grists.known(session, skein), entered);
  }
}
