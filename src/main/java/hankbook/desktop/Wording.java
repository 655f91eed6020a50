package hankbook.desktop;

import hankbook.ledger.EntryKind;
import hankbook.ledger.Place;
import hankbook.ledger.Transfer;
import hankbook.measure.Exact;
import hankbook.measure.Length;
import hankbook.measure.Mass;
import hankbook.measure.Unreadable;
import hankbook.yarn.GristSample;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.text.DecimalFormat;
import java.text.DecimalFormatSymbols;
import java.util.Locale;
import org.joda.money.Money;

/** How quantities and happenings are written on the screen. */
final class Wording {
  private static final char THIN_SPACE = '\u202F';

  private Wording() {}

  /** Metres with one decimal, thousands apart by a thin space, so that neither comma nor point can be taken for the other. */
  static String metres(Length length) {
    return format("#,##0.0").format(length.metres()) + " m";
  }

  private static DecimalFormat format(String pattern) {
    DecimalFormatSymbols symbols = DecimalFormatSymbols.getInstance(Locale.ROOT);
    symbols.setGroupingSeparator(THIN_SPACE);
    DecimalFormat format = new DecimalFormat(pattern, symbols);
    format.setRoundingMode(RoundingMode.HALF_UP);
    return format;
  }

  /** An amount of money to its smallest coin, thousands apart by a thin space, then its currency. */
  static String money(Money money) {
    return amount(money) + " " + money.getCurrencyUnit();
  }

  /** An amount without its currency, for a column that says it once. */
  static String amount(Money money) {
    int coins = money.getCurrencyUnit().getDecimalPlaces();
    return format("#,##0" + (coins == 0 ? "" : "." + "0".repeat(coins))).format(money.getAmount());
  }

  /** A mass to the gram. */
  static String grams(Mass mass) {
    return format("#,##0").format(BigDecimal.valueOf(mass.milligrams(), 3)) + " g";
  }

  /** How surely metres are known. */
  static String within(Length uncertainty) {
    return "± " + metres(uncertainty);
  }

  /** Metres and how surely they are known. */
  static String metres(Length length, Length uncertainty) {
    return uncertainty.isZero() ? metres(length) : metres(length) + " " + within(uncertainty);
  }

  /** A grist as it was weighed, and how surely. */
  static String grist(GristSample sample) {
    return sample.grist() + " ± " + Exact.plain(sample.uncertainty().fraction().multiply(100), 2) + " %";
  }

  /** What is said beside a field whose text cannot be taken. */
  static String wanted(Unreadable unreadable) {
    return "Wanted: " + unreadable.wanted() + ".";
  }

  /** Why what was typed in several places cannot be taken together. */
  static String refused(Unreadable unreadable) {
    return unreadable.found().isBlank() ? wanted(unreadable) : unreadable.found() + ": wanted " + unreadable.wanted() + ".";
  }

  /** So many of a thing, with its plural. */
  static String count(long count, String one, String many) {
    return count + " " + (count == 1 ? one : many);
  }

  /** From where to where yarn went, in few words; a plan that stays the same is said once. */
  static String way(Transfer transfer) {
    Place to = transfer.to();
    boolean samePlan = transfer.from().planName().equals(to.planName());
    return place(transfer.from(), samePlan ? "" : transfer.from().planName()) + " → " + place(to, to.planName());
  }

  private static String place(Place place, String plan) {
    String name = switch (place.kind()) {
      case MAKER -> "maker";
      case ORDERED -> "on order";
      case SHELF -> "shelf";
      case RESERVED -> "reserved";
      case LOOM -> "loom";
      case CLOTH -> "cloth";
      case THRUMS -> "thrums";
      case SAMPLE -> "samples";
      case AWAY -> "away";
      case RECOUNT -> "recounts";
      case REWOUND -> "other skein";
    };
    return plan.isEmpty() ? name : name + ", " + plan;
  }

  /** What happened, in a word or two. */
  static String happened(EntryKind kind) {
    return switch (kind) {
      case EXPECT -> "Expected";
      case RECEIVE -> "Received";
      case RESERVE -> "Reserved";
      case RELEASE -> "Released";
      case DRAW -> "Drawn";
      case RETURN -> "Returned";
      case WOVEN -> "Woven";
      case WASTE -> "Loom waste";
      case SAMPLE -> "Sampled";
      case RECOUNT -> "Recounted";
      case PART_WITH -> "Parted with";
      case REWIND -> "Rewound";
      case REVERSAL -> "Reversal";
    };
  }
}
