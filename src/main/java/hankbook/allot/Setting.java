package hankbook.allot;

import hankbook.measure.Phrase;
import hankbook.measure.Unreadable;
import hankbook.plan.WorkKind;
import java.util.Arrays;
import java.util.stream.Collectors;

/** What a weaver may judge otherwise than the program does, each with its default, which is common practice, and its range. */
@SuppressWarnings("ImmutableEnumChecker") // A range holds functions without a state.
public enum Setting {
  LABEL("label", "uncertainty of a length that is only printed, with no mass to judge it by", SettingKind.PERCENTAGE, "3 %", "0 %", "50 %"),
  BALANCE("balance", "division of the balance that skeins are weighed on", SettingKind.MASS, "1 g", "0.001 g", "100 g"),
  GRIST("grist", "uncertainty of a yarn number, where no sample of the yarn was weighed", SettingKind.PERCENTAGE, "2 %", "0 %", "50 %"),
  TURNS("turns", "uncertainty of turns counted on a reel", SettingKind.PERCENTAGE, "1 %", "0 %", "50 %"),
  RISK_LIMIT("riskLimit", "risk of running short over which a yarn is tight", SettingKind.PERCENTAGE, "5 %", "0.01 %", "50 %"),
  REMNANT("remnant", "shortest remnant of a skein that is still woven from", SettingKind.LENGTH, "5 m", "0 m", "1000 m"),
  STAND_IN_GRIST("standInGrist", "how far the grist of a stand-in may lie from the yarn's own", SettingKind.PERCENTAGE, "10 %", "0 %", "100 %"),
  SETT("sett", "how far the sett that a reed gives may lie from the plan's", SettingKind.PERCENTAGE, "3 %", "0 %", "50 %"),
  HOURLY_RATE("hourlyRate", "cost of an hour of work, of whatever kind", SettingKind.MONEY, SettingKind.NOT_SET, "0", "100000"),
  WINDING_RATE("windingRate", "cost of an hour of winding, where it is another", SettingKind.MONEY, SettingKind.NOT_SET, "0", "100000"),
  BEAMING_RATE("beamingRate", "cost of an hour of beaming, where it is another", SettingKind.MONEY, SettingKind.NOT_SET, "0", "100000"),
  THREADING_RATE("threadingRate", "cost of an hour of threading, where it is another", SettingKind.MONEY, SettingKind.NOT_SET, "0", "100000"),
  SLEYING_RATE("sleyingRate", "cost of an hour of sleying, where it is another", SettingKind.MONEY, SettingKind.NOT_SET, "0", "100000"),
  WEAVING_RATE("weavingRate", "cost of an hour of weaving, where it is another", SettingKind.MONEY, SettingKind.NOT_SET, "0", "100000"),
  FINISHING_RATE("finishingRate", "cost of an hour of finishing, where it is another", SettingKind.MONEY, SettingKind.NOT_SET, "0", "100000"),
  WINDING_TIME("windingTime", "time that winding takes for each end", SettingKind.DURATION, "30 s", "0 s", "1 h"),
  BEAMING_TIME("beamingTime", "time that beaming takes for each end", SettingKind.DURATION, "10 s", "0 s", "1 h"),
  THREADING_TIME("threadingTime", "time that threading takes for each end", SettingKind.DURATION, "30 s", "0 s", "1 h"),
  SLEYING_TIME("sleyingTime", "time that sleying takes for each end", SettingKind.DURATION, "10 s", "0 s", "1 h"),
  WEAVING_TIME("weavingTime", "time that weaving takes for each pick", SettingKind.DURATION, "4 s", "0 s", "1 h"),
  FINISHING_TIME("finishingTime", "time that finishing takes for each piece", SettingKind.DURATION, "15 min", "0 s", "24 h"),
  OVERHEAD("overhead", "overheads on yarn and work together", SettingKind.PERCENTAGE, "0 %", "0 %", "1000 %"),
  PLAN_OVERHEAD("planOverhead", "overheads on each plan", SettingKind.MONEY, SettingKind.NOT_SET, "0", "100000"),
  UNEXPLAINED("unexplained", "part of what was used of a yarn that may stay unexplained without a reason", SettingKind.PERCENTAGE, "3 %", "0 %", "100 %"),
  CURRENCY("currency", "currency of the house, in which everything is costed", SettingKind.CURRENCY, "as paid", "", ""),
  VALUE_METHOD("valueMethod", "method by which the stock is valued: identified, fifo or average", SettingKind.CHOICE, "identified", "", "identified, fifo, average"),
  WARP_TAKE_UP("warpTakeUp", "warp take-up that a new plan begins with", SettingKind.TAKE_UP, "8 % of cloth", "0 %", "100 %"),
  WEFT_TAKE_UP("weftTakeUp", "weft take-up that a new plan begins with", SettingKind.TAKE_UP, "5 % of cloth", "0 %", "100 %"),
  DRAW_IN("drawIn", "draw-in that a new plan begins with", SettingKind.PERCENTAGE, "6 %", "0 %", "60 %"),
  LENGTH_SHRINKAGE("lengthShrinkage", "shrinkage in length that a new plan begins with", SettingKind.PERCENTAGE, "8 %", "0 %", "80 %"),
  WIDTH_SHRINKAGE("widthShrinkage", "shrinkage in width that a new plan begins with", SettingKind.PERCENTAGE, "8 %", "0 %", "80 %"),
  SAMPLING("sampling", "warp for sampling that a new plan begins with", SettingKind.SHORT_LENGTH, "30 cm", "0 cm", "2000 cm"),
  LOOM_WASTE("loomWaste", "loom waste that a new plan begins with", SettingKind.SHORT_LENGTH, "70 cm", "0 cm", "1000 cm"),
  GAP("gap", "gap between two pieces that a new plan begins with", SettingKind.SHORT_LENGTH, "0 cm", "0 cm", "500 cm"),
  WINDING("winding", "yarn lost in winding that a new plan begins with", SettingKind.PERCENTAGE, "0 %", "0 %", "50 %"),
  REPAIR_ENDS("repairEnds", "ends for repairs that a new plan begins with", SettingKind.COUNT, "0", "0", "1000"),
  ROUND_UP_TO("roundUpTo", "step up to which a new plan rounds its warp", SettingKind.SHORT_LENGTH, "1 cm", "0 cm", "500 cm"),
  THREADS("threads", "threads wound together that a new plan begins with", SettingKind.COUNT, "1", "1", "64");

  private final String key;
  private final String words;
  private final SettingKind kind;
  private final String standard;
  private final String least;
  private final String most;

  Setting(String key, String words, SettingKind kind, String standard, String least, String most) {
    this.key = key;
    this.words = words;
    this.kind = kind;
    this.standard = standard;
    this.least = least;
    this.most = most;
  }

  /**
   * The setting with a key.
   *
   * @throws Unreadable if there is none
   */
  public static Setting named(String key) {
    return Arrays.stream(values())
        .filter(setting -> setting.key.equals(key))
        .findFirst()
        .orElseThrow(() -> new Unreadable(key, Phrase.of("one of {0}", Arrays.stream(values()).map(Setting::key).collect(Collectors.joining(", ")))));
  }

  /** What an hour of a kind of work costs. */
  public static Setting rate(WorkKind kind) {
    return named(kind.key() + "Rate");
  }

  /** How long a kind of work takes, each time. */
  public static Setting time(WorkKind kind) {
    return named(kind.key() + "Time");
  }

  /** Whether it is an allowance that a new plan begins with; a plan in which it is not written does not have it. */
  public boolean isStanding() {
    return compareTo(WARP_TAKE_UP) >= 0;
  }

  /** Whether it is one of a few words, which {@link #most} has all. */
  public boolean isChoice() {
    return kind == SettingKind.CHOICE;
  }

  /** Whether its content is a quantity, rather than a word. */
  public boolean isQuantity() {
    return kind != SettingKind.CHOICE && kind != SettingKind.CURRENCY;
  }

  /** By which it is called for and kept; never changed. */
  public String key() {
    return key;
  }

  /** What it is, as a noun phrase. */
  public String words() {
    return words;
  }

  /** Whether it is an amount of money. */
  public boolean isMoney() {
    return kind == SettingKind.MONEY;
  }

  /** Whether it is how long a kind of work takes. */
  public boolean isTime() {
    return kind == SettingKind.DURATION;
  }

  /** What it is where nothing is set. */
  public String standard() {
    return standard;
  }

  /** The least it may be; empty where there is no such thing. */
  public String least() {
    return least;
  }

  /** The most it may be, or all that may be chosen; empty where there is no such thing. */
  public String most() {
    return most;
  }

  /**
   * A content as it is kept.
   *
   * @throws Unreadable if it is of another kind, or outside the range
   */
  public String tidy(String content) {
    return kind.tidy(content, least, most);
  }
}
