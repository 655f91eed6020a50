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
      case CURRENCY -> "Currency of the house";
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
      case CURRENCY -> "What yarn and work cost is said in this currency. Yarn that was paid in another is entered as a purchase, with its rate.";
    };
  }
}
