package hankbook.desktop;

import hankbook.allot.Setting;
import hankbook.cost.ValueMethod;
import hankbook.desktop.say.Say;
import hankbook.desktop.units.ClothUnit;
import hankbook.desktop.units.YarnUnit;
import hankbook.measure.Length;

/** What each setting is called on the screen, and what its number does. */
final class SettingWords {
  private SettingWords() {}

  static String name(Setting setting) {
    return switch (setting) {
      case RISK_LIMIT -> Say.text("Risk over which a yarn is TIGHT");
      case LABEL -> Say.text("Doubt about a printed length");
      case BALANCE -> Say.text("Division of the balance");
      case GRIST -> Say.text("Doubt about a yarn's number");
      case TURNS -> Say.text("Doubt about turns on a reel");
      case REMNANT -> Say.text("Shortest useful remnant");
      case STAND_IN_GRIST -> Say.text("Grist of a stand-in");
      case SETT -> Say.text("Tolerance of the sett");
      case HOURLY_RATE -> Say.text("Cost of an hour");
      case WINDING_RATE -> Say.text("Cost of an hour of winding");
      case BEAMING_RATE -> Say.text("Cost of an hour of beaming");
      case THREADING_RATE -> Say.text("Cost of an hour of threading");
      case SLEYING_RATE -> Say.text("Cost of an hour of sleying");
      case WEAVING_RATE -> Say.text("Cost of an hour of weaving");
      case FINISHING_RATE -> Say.text("Cost of an hour of finishing");
      case WINDING_TIME -> Say.text("Time for winding");
      case BEAMING_TIME -> Say.text("Time for beaming");
      case THREADING_TIME -> Say.text("Time for threading");
      case SLEYING_TIME -> Say.text("Time for sleying");
      case WEAVING_TIME -> Say.text("Time for weaving");
      case FINISHING_TIME -> Say.text("Time for finishing");
      case OVERHEAD -> Say.text("Overheads in percent");
      case PLAN_OVERHEAD -> Say.text("Overheads of each plan");
      case UNEXPLAINED -> Say.text("What may stay unexplained");
      case CURRENCY -> Say.text("Currency of the house");
      case VALUE_METHOD -> Say.text("Valuing the stock");
      case WARP_TAKE_UP -> Say.text("Warp take-up");
      case WEFT_TAKE_UP -> Say.text("Weft take-up");
      case DRAW_IN -> Say.text("Draw-in");
      case LENGTH_SHRINKAGE -> Say.text("Shrinkage, length");
      case WIDTH_SHRINKAGE -> Say.text("Shrinkage, width");
      case SAMPLING -> Say.text("Sampling");
      case LOOM_WASTE -> Say.text("Loom waste");
      case GAP -> Say.text("Gap between");
      case WINDING -> Say.text("Winding loss");
      case REPAIR_ENDS -> Say.text("Repair ends");
      case ROUND_UP_TO -> Say.text("Round warp up to");
      case THREADS -> Say.text("Threads together");
    };
  }

  static String what(Setting setting) {
    return switch (setting) {
      case RISK_LIMIT ->
          Say.text("A yarn is TIGHT where the risk of running short is over this, and COVERED where it is not. A larger number calls fewer yarns TIGHT.");
      case LABEL -> Say.text("How far a skein may be from the length on its label, where no weight is known. A larger number calls more yarns TIGHT.");
      case BALANCE -> Say.text("The smallest step that your balance shows. Skeins that are weighed are known as surely as that.");
      case GRIST -> Say.text("How far a yarn may be from the number it is sold by. Weighing a measured sample makes it surer than this.");
      case TURNS -> Say.text("How far a length may be off that was counted in turns on a reel.");
      case REMNANT -> Say.text("What is left on a skein and shorter than this is not counted on for weft.");
      case STAND_IN_GRIST -> Say.text("How much thicker or finer another yarn may be that is offered in the place of one that lacks.");
      case SETT -> Say.text("How far the sett that a reed gives may be from the plan's before the plan is warned.");
      case HOURLY_RATE -> Say.text("What an hour of work costs where its kind has no rate of its own. Without it hours are shown, and their cost is not counted.");
      case WINDING_RATE, BEAMING_RATE, THREADING_RATE, SLEYING_RATE, WEAVING_RATE, FINISHING_RATE -> Say.text("Where this kind of work costs more or less than the rest.");
      case WINDING_TIME, BEAMING_TIME, THREADING_TIME, SLEYING_TIME ->
          Say.text("For one end. Where nothing is set, times of plans that were finished take its place.");
      case WEAVING_TIME -> Say.text("For one pick. Where nothing is set, times of plans that were finished take its place.");
      case FINISHING_TIME -> Say.text("For one piece: hems, fringes, washing. Where nothing is set, times of plans that were finished take its place.");
      case OVERHEAD -> Say.text("Rent, heating, tools: a part of what yarn and work cost, added to every plan.");
      case PLAN_OVERHEAD -> Say.text("A fixed sum that is added to every plan, beside the percentage.");
      case UNEXPLAINED -> Say.text("After the cloth: how much of what was used of a yarn may stay unexplained before a reason is asked for.");
      case CURRENCY -> Say.text("What yarn and work cost is said in this currency. Yarn that was paid in another is entered as a purchase, with its rate.");
      case VALUE_METHOD ->
          Say.text("By identified cost each skein is worth what was paid for it; fifo takes the newest metres of a yarn and colour, average one price for all of them.");
      case WARP_TAKE_UP, WEFT_TAKE_UP, DRAW_IN, LENGTH_SHRINKAGE, WIDTH_SHRINKAGE, SAMPLING, LOOM_WASTE, GAP, WINDING, REPAIR_ENDS, ROUND_UP_TO, THREADS ->
          standing(setting);
    };
  }

  private static String standing(Setting setting) {
    return switch (setting) {
      case WARP_TAKE_UP -> Say.text("How much longer the warp is than the cloth that is woven of it.");
      case WEFT_TAKE_UP -> Say.text("How much longer a pick is than the reed is wide.");
      case DRAW_IN -> Say.text("How much narrower the cloth is at the fell than in the reed.");
      case LENGTH_SHRINKAGE, WIDTH_SHRINKAGE -> Say.text("Lost from the loom to the finished cloth.");
      case SAMPLING -> Say.text("Warp for trying out before the first piece.");
      case LOOM_WASTE -> Say.text("Warp that cannot be woven. Of a loom you own its own waste is offered.");
      case GAP -> Say.text("Left unwoven between two pieces.");
      case WINDING -> Say.text("Yarn lost at the warping board or mill.");
      case REPAIR_ENDS -> Say.text("Whole ends more, to mend with.");
      case ROUND_UP_TO -> Say.text("The step up to which the length of a warp is rounded.");
      default -> Say.text("Held in one hand at the warping board or mill.");
    };
  }

  /** A content of a setting, lengths in the user's units. */
  static String said(Setting setting, String content) {
    if (setting == Setting.VALUE_METHOD) {
      return ValueMethodWords.name(ValueMethod.parse(content));
    }
    boolean yards = setting == Setting.REMNANT && Wording.units().yarn() != YarnUnit.METRES;
    boolean inches = setting.isStanding() && content.endsWith("cm") && Wording.units().cloth() != ClothUnit.CENTIMETRES;
    if (yards || inches) {
      return yards ? Wording.yarn(Length.parse(content)) : Wording.cloth(Length.parse(content));
    }
    return setting.isQuantity() ? TypedText.shown(Say.known(content)) : Say.known(content);
  }

  /** What may be typed, and what holds where nothing is. */
  static String range(Setting setting) {
    if (setting.isMoney()) {
      return Say.text("An amount with its currency, such as 18 EUR; {0} until you say one.", said(setting, setting.standard()));
    }
    return switch (setting) {
      case CURRENCY -> Say.text("Three letters such as EUR; where nothing is set, the currency in which most yarn was paid.");
      case VALUE_METHOD -> Say.text("{0} where nothing is set.", ValueMethodWords.name(ValueMethod.parse(setting.standard())));
      default -> Say.text("From {0} to {1}; {2} where nothing is set.", said(setting, setting.least()), said(setting, setting.most()), said(setting, setting.standard()));
    };
  }
}
