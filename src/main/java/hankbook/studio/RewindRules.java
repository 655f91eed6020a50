package hankbook.studio;

import hankbook.measure.Phrase;
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
      throw NotDone.because("There is no skein {0} in the ledger.", code);
    }
    if (ExpectedYarn.isOnOrder(session, code)) {
      throw NotDone.because("{0} is still on order; say that it arrived before yarn is wound off it or onto it.", code);
    }
    if (!held.get().skein().isMeasured()) {
      throw NotDone.because("No length of {0} is known; measure it with recount first.", code);
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
        throw NotDone.because("There is a skein {0} already, {1}; give a code of its own, or say that the two are to be joined. Nothing was changed.", code, skein.yarn());
      }
      if (!skein.yarn().equals(off.skein().yarn()) || onto.form().filter(form -> form != skein.form()).isPresent()) {
        throw NotDone.because("{0} was a {1} of {2} before that was taken back; give another code. Nothing was changed.", code, new Phrase.Word(skein.form().toString()), skein.yarn());
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
      throw NotDone.because("There is nothing on {0} to join onto; give the yarn a new code. Nothing was changed.", code);
    }
    if (!one.yarn().equals(other.yarn())) {
      throw NotDone.because("{0} is {1} and {2} is {3}; only yarn of one kind and colour is joined. Nothing was changed.", one.code(), one.yarn(), code, other.yarn());
    }
    if (one.grist().isPresent() && other.grist().isPresent() && !one.grist().map(YarnNumber::grist).equals(other.grist().map(YarnNumber::grist))) {
      throw NotDone.because(
          "{0} is {1} and {2} is {3}; yarn of two grists would have no grist of its own. Nothing was changed.", one.code(), one.grist().get(), code, other.grist().get());
    }
    Optional<CurrencyUnit> paid = one.cost().map(Money::getCurrencyUnit);
    Optional<CurrencyUnit> paidToo = other.cost().map(Money::getCurrencyUnit);
    if (paid.isPresent() && paidToo.isPresent() && !paid.equals(paidToo)) {
      throw NotDone.because("{0} was paid for in {1} and {2} in {3}; no two currencies are added. Nothing was changed.", one.code(), paid.get(), code, paidToo.get());
    }
    return on;
  }

  /** The lot that the joined skein has. */
  static String lot(Skein one, Skein other, boolean mixLots) throws NotDone {
    String together = MixedLots.together(one.lot(), other.lot());
    if (!one.lot().equals(other.lot()) && !mixLots) {
      throw NotDone.because(
          "{0} is {1} and {2} is {3}; joined they are of neither. Say that the lots may be mixed (--mix-lots) if that is "
            + "meant. Nothing was changed.", one.code(), named(one.lot()), other.code(), named(other.lot()));
    }
    if (together.length() > OneLine.MOST) {
      throw NotDone.because("The lots together would have a name of over {0} characters; give one of them a shorter name first. Nothing was changed.", OneLine.MOST);
    }
    return together;
  }

  private static String named(String lot) {
    return lot.isEmpty() ? "of a lot that is not known" : "of lot " + lot;
  }

  private static void refuseItself(ShelfSkein off, String code) throws NotDone {
    if (off.skein().code().equals(code)) {
      throw NotDone.because("{0} cannot be wound onto itself; give the code of another.", code);
    }
  }
}
