package hankbook.desktop;

import hankbook.allot.Setting;

/** What each setting is called on the screen, and what its number does. */
final class SettingWords {
  private SettingWords() {}

  static String name(Setting setting) {
    return switch (setting) {
      case RISK_LIMIT -> "Risk over which a yarn is TIGHT";
      case LABEL -> "Doubt about a printed length";
      case BALANCE -> "Division of the balance";
      case GRIST -> "Doubt about a yarn's number";
      case TURNS -> "Doubt about turns on a reel";
      case REMNANT -> "Shortest useful remnant";
      case STAND_IN_GRIST -> "Grist of a stand-in";
      case SETT -> "Tolerance of the sett";
      case HOURLY_RATE -> "Cost of an hour";
      case WINDING_RATE -> "Cost of an hour of winding";
      case BEAMING_RATE -> "Cost of an hour of beaming";
      case THREADING_RATE -> "Cost of an hour of threading";
      case SLEYING_RATE -> "Cost of an hour of sleying";
      case WEAVING_RATE -> "Cost of an hour of weaving";
      case FINISHING_RATE -> "Cost of an hour of finishing";
      case WINDING_TIME -> "Time for winding";
      case BEAMING_TIME -> "Time for beaming";
      case THREADING_TIME -> "Time for threading";
      case SLEYING_TIME -> "Time for sleying";
      case WEAVING_TIME -> "Time for weaving";
      case FINISHING_TIME -> "Time for finishing";
      case OVERHEAD -> "Overheads in percent";
      case PLAN_OVERHEAD -> "Overheads of each plan";
      case UNEXPLAINED -> "What may stay unexplained";
      case CURRENCY -> "Currency of the house";
      case VALUE_METHOD -> "Valuing the stock";
    };
  }

  static String what(Setting setting) {
    return switch (setting) {
      case RISK_LIMIT -> "A yarn is TIGHT where the risk of running short is over this, and COVERED where it is not. A larger number calls fewer yarns TIGHT.";
      case LABEL -> "How far a skein may be from the length on its label, where no weight is known. A larger number calls more yarns TIGHT.";
      case BALANCE -> "The smallest step that your balance shows. Skeins that are weighed are known as surely as that.";
      case GRIST -> "How far a yarn may be from the number it is sold by. Weighing a measured sample makes it surer than this.";
      case TURNS -> "How far a length may be off that was counted in turns on a reel.";
      case REMNANT -> "What is left on a skein and shorter than this is not counted on for weft.";
      case STAND_IN_GRIST -> "How much thicker or finer another yarn may be that is offered in the place of one that lacks.";
      case SETT -> "How far the sett that a reed gives may be from the plan's before the plan is warned.";
      case HOURLY_RATE -> "What an hour of work costs where its kind has no rate of its own. Without it hours are shown, and their cost is not counted.";
      case WINDING_RATE, BEAMING_RATE, THREADING_RATE, SLEYING_RATE, WEAVING_RATE, FINISHING_RATE -> "Where this kind of work costs more or less than the rest.";
      case WINDING_TIME, BEAMING_TIME, THREADING_TIME, SLEYING_TIME -> "For one end. Where nothing is set, times of plans that were finished take its place.";
      case WEAVING_TIME -> "For one pick. Where nothing is set, times of plans that were finished take its place.";
      case FINISHING_TIME -> "For one piece: hems, fringes, washing. Where nothing is set, times of plans that were finished take its place.";
      case OVERHEAD -> "Rent, heating, tools: a part of what yarn and work cost, added to every plan.";
      case PLAN_OVERHEAD -> "A fixed sum that is added to every plan, beside the percentage.";
      case UNEXPLAINED -> "After the cloth: how much of what was used of a yarn may stay unexplained before a reason is asked for.";
      case CURRENCY -> "What yarn and work cost is said in this currency. Yarn that was paid in another is entered as a purchase, with its rate.";
      case VALUE_METHOD -> "By identified cost each skein is worth what was paid for it; fifo takes the newest metres of a yarn and colour, average one price for all of them.";
    };
  }

  /** What may be typed, and what holds where nothing is. */
  static String range(Setting setting) {
    if (setting.isMoney()) {
      return "An amount with its currency, such as 18 EUR; " + setting.standard() + " until you say one.";
    }
    return switch (setting) {
      case CURRENCY -> "Three letters such as EUR; where nothing is set, the currency in which most yarn was paid.";
      case VALUE_METHOD -> "One of " + setting.most() + "; " + setting.standard() + " where nothing is set.";
      default -> "From " + setting.least() + " to " + setting.most() + "; " + setting.standard() + " where nothing is set.";
    };
  }
}
