package hankbook.desktop;

import hankbook.allot.Setting;

/** What settings are about, in the order in which they are shown. */
enum SettingGroup {
  JUDGING("Judging plans", "When a plan is called COVERED, TIGHT or SHORT, and what it is warned of."),
  MEASURING("Measuring", "How surely the metres on a skein are known."),
  WORK("Work and overheads", "What a plan costs beside its yarn."),
  MONEY("Money", "In what all of it is reckoned."),
  AFTER("After the cloth", "When a cloth is cut off and the book is squared.");

  private final String words;
  private final String about;

  SettingGroup(String words, String about) {
    this.words = words;
    this.about = about;
  }

  String words() {
    return words;
  }

  String about() {
    return about;
  }

  static SettingGroup of(Setting setting) {
    return switch (setting) {
      case RISK_LIMIT, REMNANT, STAND_IN_GRIST, SETT -> JUDGING;
      case LABEL, GRIST, TURNS, BALANCE -> MEASURING;
      case HOURLY_RATE, OVERHEAD, PLAN_OVERHEAD, WINDING_RATE, BEAMING_RATE, THREADING_RATE, SLEYING_RATE, WEAVING_RATE, FINISHING_RATE, WINDING_TIME, BEAMING_TIME,
          THREADING_TIME, SLEYING_TIME, WEAVING_TIME, FINISHING_TIME -> WORK;
      case CURRENCY, VALUE_METHOD -> MONEY;
      case UNEXPLAINED -> AFTER;
    };
  }
}
