package hankbook.allot;

import hankbook.measure.Unreadable;
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
  CURRENCY("currency", "currency of the house, in which everything is costed", SettingKind.CURRENCY, "as paid", "", "");

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
        .orElseThrow(() -> new Unreadable(key, "one of " + Arrays.stream(values()).map(Setting::key).collect(Collectors.joining(", "))));
  }

  /** By which it is called for and kept; never changed. */
  public String key() {
    return key;
  }

  /** What it is, as a noun phrase. */
  public String words() {
    return words;
  }

  /** What it is where nothing is set. */
  public String standard() {
    return standard;
  }

  /** The least it may be; empty where there is no such thing. */
  public String least() {
    return least;
  }

  /** The most it may be; empty where there is no such thing. */
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
