package hankbook.desktop;

import hankbook.desktop.say.Say;
import hankbook.desktop.units.Quantities;
import hankbook.desktop.units.Units;
import hankbook.ledger.EntryKind;
import hankbook.ledger.Place;
import hankbook.ledger.Transfer;
import hankbook.measure.Grist;
import hankbook.measure.Length;
import hankbook.measure.LengthUnit;
import hankbook.measure.Mass;
import hankbook.measure.Phrase;
import hankbook.measure.Sett;
import hankbook.measure.Unreadable;
import hankbook.yarn.GristSample;
import org.apache.commons.numbers.fraction.BigFraction;
import org.joda.money.Money;

/** How quantities and happenings are written on the screen. */
final class Wording {
  private static volatile Units units = Units.METRIC;

  private Wording() {}

  /** Says quantities in these units from now on; what was said before stays as it was. */
  static void in(Units chosen) {
    units = chosen;
  }

  /** The units of whoever sits before the window. */
  static Units units() {
    return units;
  }

  private static Quantities quantities() {
    return new Quantities(units, Say.language().decimalMark());
  }

  /** A length of yarn. */
  static String yarn(Length length) {
    return quantities().yarn(length);
  }

  /** A length of yarn and how surely it is known. */
  static String yarn(Length length, Length uncertainty) {
    return uncertainty.isZero() ? yarn(length) : yarn(length) + " " + within(uncertainty);
  }

  /** A length of cloth or of the warp; short ones in the unit of widths. */
  static String cloth(Length length) {
    return quantities().cloth(length);
  }

  /** A length along the warp, always in the unit of long cloth, so that parts of it stand beside their sum. */
  static String warp(Length length) {
    return quantities().warp(length);
  }

  /** A width of cloth or in the reed. */
  static String width(Length width) {
    return quantities().width(width);
  }

  /** A mass of yarn. */
  static String mass(Mass mass) {
    return quantities().mass(mass);
  }

  /** Ends or picks to a length. */
  static String sett(Sett sett) {
    return quantities().sett(sett);
  }

  /** A grist by the numbers that yarns of its fibre go by. */
  static String grist(Grist grist, String fibre) {
    return quantities().grist(grist, fibre);
  }

  /** An example of what may be typed: a round quantity in the user's units; what is no quantity stays. */
  static String example(String metric) {
    return quantities().example(metric);
  }

  /** A part of something in percent, with at most so many places. */
  static String percent(BigFraction part, int places) {
    return quantities().percent(part, places);
  }

  /** A number with at most so many places. */
  static String number(BigFraction number, int places) {
    return quantities().number(number, places == 0 ? "#,##0" : "#,##0." + "#".repeat(places));
  }

  /** An amount of money to its smallest coin, thousands apart by a thin space, then its currency. */
  static String money(Money money) {
    return amount(money) + " " + money.getCurrencyUnit();
  }

  /** An amount without its currency, for a column that says it once. */
  static String amount(Money money) {
    int coins = money.getCurrencyUnit().getDecimalPlaces();
    return quantities().number(money.getAmount(), "#,##0" + (coins == 0 ? "" : "." + "0".repeat(coins)));
  }

  /** How surely a length of yarn is known. */
  static String within(Length uncertainty) {
    return "± " + yarn(uncertainty);
  }

  /** A grist as it was weighed, and how surely. */
  static String grist(GristSample sample, String fibre) {
    return grist(sample.grist(), fibre) + " ± " + percent(sample.uncertainty().fraction(), 2);
  }

  /** What is said beside a field whose text cannot be taken. */
  static String wanted(Unreadable unreadable) {
    return wanted(unreadable.found(), phrase(unreadable.phrase()));
  }

  /**
   * What is said beside a field whose text cannot be taken.
   *
   * @param found the text, as the ledger would have it
   * @param wanted what would have been taken
   */
  static String wanted(String found, String wanted) {
    String mark = TypedText.aboutMark(found);
    return Say.text("Wanted: {0}.", Say.known(wanted)) + (mark.isEmpty() ? "" : " " + mark);
  }

  /** Why what was typed in several places cannot be taken together. */
  static String refused(Unreadable unreadable) {
    return unreadable.found().isBlank() ? wanted(unreadable) : Say.text("{0}: wanted {1}.", unreadable.found(), phrase(unreadable.phrase()));
  }

  /** A sentence from below the window, in the user's language and units. */
  static String phrase(Phrase phrase) {
    return Say.phrase(phrase, Wording::written);
  }

  private static String written(Object value) {
    return switch (value) {
      case Phrase.As as when as.quantity() instanceof Number -> as.english();
      case Phrase.As as -> written(as.quantity());
      case Phrase.Width width -> width(width.length());
      case Phrase.Percent percent -> percent(percent.part(), percent.places());
      case Phrase.Figure figure -> number(figure.number(), figure.places());
      case Length length -> yarn(length);
      case Mass mass -> mass(mass);
      case Sett sett -> sett(sett);
      case Money money -> money(money);
      default -> value.toString();
    };
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

  /** A place in few words, with the plan it belongs to. */
  static String place(Place place) {
    return place(place, place.planName());
  }

  private static String place(Place place, String plan) {
    String name = switch (place.kind()) {
      case MAKER -> Say.text("maker");
      case ORDERED -> Say.text("on order");
      case SHELF -> Say.text("shelf");
      case RESERVED -> Say.text("reserved");
      case LOOM -> Say.text("loom");
      case CLOTH -> Say.text("cloth");
      case THRUMS -> Say.text("thrums");
      case SAMPLE -> Say.text("samples");
      case AWAY -> Say.text("away");
      case RECOUNT -> Say.text("recounts");
      case REWOUND -> Say.text("other skein");
    };
    return plan.isEmpty() ? name : Say.text("{0}, {1}", name, plan);
  }

  /** What happened, in a word or two. */
  static String happened(EntryKind kind) {
    return switch (kind) {
      case EXPECT -> Say.text("Expected");
      case RECEIVE -> Say.text("Received");
      case RESERVE -> Say.text("Reserved");
      case RELEASE -> Say.text("Released");
      case DRAW -> Say.text("Drawn");
      case RETURN -> Say.text("Returned");
      case WOVEN -> Say.text("Woven");
      case WASTE -> Say.text("Loom waste");
      case SAMPLE -> Say.text("Sampled");
      case RECOUNT -> Say.text("Recounted");
      case PART_WITH -> Say.text("Parted with");
      case REWIND -> Say.text("Rewound");
      case REVERSAL -> Say.text("Reversal");
    };
  }
}
