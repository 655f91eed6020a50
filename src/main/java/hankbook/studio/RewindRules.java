package hankbook.studio;

import hankbook.measure.YarnNumber;
import hankbook.store.Session;
import hankbook.yarn.MixedLots;
import hankbook.yarn.OneLine;
import hankbook.yarn.Skein;
import java.util.Optional;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;

/** Which skeins yarn may be wound off and onto. */
final class RewindRules {
  private RewindRules() {}

  /** A skein that yarn may come off. */
  static ShelfSkein off(Session session, String code) throws NotDone {
    Optional<ShelfSkein> held = Shelf.skein(session, code);
    if (held.isEmpty()) {
      throw NotDone.because("There is no skein " + code + " in the ledger.");
    }
    if (ExpectedYarn.isOnOrder(session, code)) {
      throw NotDone.because(code + " is still on order; say that it arrived before yarn is wound off it or onto it.");
    }
    if (!held.get().skein().isMeasured()) {
      throw NotDone.because("No length of " + code + " is known; measure it with recount first.");
    }
    return held.get();
  }

  /** The skein that was made so before and is in no place since, which may be wound onto anew; empty where the code is not taken. */
  static Optional<Skein> empty(Session session, ShelfSkein off, NewPackage onto) throws NotDone {
    String code = onto.code();
    refuseItself(off, code);
    Optional<Skein> there = session.skeins().find(code);
    if (there.isPresent()) {
      Skein skein = there.get();
      boolean gone = session.balances().woundOnly().contains(code) && session.balances().ofSkein(code).lengths().values().stream().allMatch(length -> length.isZero());
      if (!gone) {
        throw NotDone.because("There is a skein " + code + " already, " + skein.yarn() + "; give a code of its own, or say that the two are to be joined. Nothing was changed.");
      }
      if (!skein.yarn().equals(off.skein().yarn()) || onto.form().filter(form -> form != skein.form()).isPresent()) {
        throw NotDone.because(code + " was a " + skein.form() + " of " + skein.yarn() + " before that was taken back; give another code. Nothing was changed.");
      }
    }
    return there;
  }

  /** A skein that yarn of the other may be joined onto, whatever their lots. */
  static ShelfSkein on(Session session, ShelfSkein off, String code) throws NotDone {
    refuseItself(off, code);
    ShelfSkein on = off(session, code);
    Skein one = off.skein();
    Skein other = on.skein();
    if (!on.free().plus(on.allReserved()).isPositive()) {
      throw NotDone.because("There is nothing on " + code + " to join onto; give the yarn a new code. Nothing was changed.");
    }
    if (!one.yarn().equals(other.yarn())) {
      throw NotDone.because(one.code() + " is " + one.yarn() + " and " + code + " is " + other.yarn() + "; only yarn of one kind and colour is joined. Nothing was changed.");
    }
    if (one.grist().isPresent() && other.grist().isPresent() && !one.grist().map(YarnNumber::grist).equals(other.grist().map(YarnNumber::grist))) {
      throw NotDone.because(
          one.code() + " is " + one.grist().get() + " and " + code + " is " + other.grist().get() + "; yarn of two grists would have no grist of its own. Nothing was changed.");
    }
    Optional<CurrencyUnit> paid = one.cost().map(Money::getCurrencyUnit);
    Optional<CurrencyUnit> paidToo = other.cost().map(Money::getCurrencyUnit);
    if (paid.isPresent() && paidToo.isPresent() && !paid.equals(paidToo)) {
      throw NotDone.because(one.code() + " was paid for in " + paid.get() + " and " + code + " in " + paidToo.get() + "; no two currencies are added. Nothing was changed.");
    }
    return on;
  }

  /** The lot that the joined skein has. */
  static String lot(Skein one, Skein other, boolean mixLots) throws NotDone {
    String together = MixedLots.together(one.lot(), other.lot());
    if (!one.lot().equals(other.lot()) && !mixLots) {
      throw NotDone.because(
          one.code() + " is " + named(one.lot()) + " and " + other.code() + " is " + named(other.lot())
              + "; joined they are of neither. Say that the lots may be mixed (--mix-lots) if that is meant. Nothing was changed.");
    }
    if (together.length() > OneLine.MOST) {
      throw NotDone.because("The lots together would have a name of over " + OneLine.MOST + " characters; give one of them a shorter name first. Nothing was changed.");
    }
    return together;
  }

  private static String named(String lot) {
    return lot.isEmpty() ? "of a lot that is not known" : "of lot " + lot;
  }

  private static void refuseItself(ShelfSkein off, String code) throws NotDone {
    if (off.skein().code().equals(code)) {
      throw NotDone.because(code + " cannot be wound onto itself; give the code of another.");
    }
  }
}
