package hankbook.desktop;

import hankbook.allot.Setting;
import hankbook.desktop.say.Say;

/** What settings are about, in the order in which they are shown. */
enum SettingGroup {
  JUDGING,
  MEASURING,
  NEW_PLANS,
  WORK,
  MONEY,
  AFTER;

  String words() {
    return switch (this) {
      case JUDGING -> Say.text("Judging plans");
      case MEASURING -> Say.text("Measuring");
      case NEW_PLANS -> Say.text("New plans");
      case WORK -> Say.text("Work and overheads");
      case MONEY -> Say.text("Money");
      case AFTER -> Say.text("After the cloth");
    };
  }

  String about() {
    return switch (this) {
      case JUDGING -> Say.text("When a plan is called COVERED, TIGHT or SHORT, and what it is warned of.");
      case MEASURING -> Say.text("How surely the metres on a skein are known.");
      case NEW_PLANS -> Say.text("What is written into a plan when it is begun. Plans that there are do not change.");
      case WORK -> Say.text("What a plan costs beside its yarn.");
      case MONEY -> Say.text("In what all of it is reckoned.");
      case AFTER -> Say.text("When a cloth is cut off and the book is squared.");
    };
  }

  static SettingGroup of(Setting setting) {
    return switch (setting) {
      case RISK_LIMIT, REMNANT, STAND_IN_GRIST, SETT -> JUDGING;
      case LABEL, GRIST, TURNS, BALANCE -> MEASURING;
      case HOURLY_RATE, OVERHEAD, PLAN_OVERHEAD, WINDING_RATE, BEAMING_RATE, THREADING_RATE, SLEYING_RATE, WEAVING_RATE, FINISHING_RATE, WINDING_TIME, BEAMING_TIME,
          THREADING_TIME, SLEYING_TIME, WEAVING_TIME, FINISHING_TIME -> WORK;
      case CURRENCY, VALUE_METHOD -> MONEY;
      case WARP_TAKE_UP, WEFT_TAKE_UP, DRAW_IN, LENGTH_SHRINKAGE, WIDTH_SHRINKAGE, SAMPLING, LOOM_WASTE, GAP, WINDING, REPAIR_ENDS, ROUND_UP_TO, THREADS -> NEW_PLANS;
      case UNEXPLAINED -> AFTER;
    };
  }
}
