package hankbook.allot;

import hankbook.measure.DurationText;
import hankbook.measure.Length;
import hankbook.measure.Mass;
import hankbook.measure.MoneyText;
import hankbook.measure.Percentage;
import hankbook.yarn.Doubts;
import java.time.Duration;
import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;

/**
 * By what a check judges: how far each measurement is trusted, when enough is called tight, and what else a weaver may set.
 *
 * @param set what was set otherwise than the default, as {@link Setting#tidy} writes it
 */
public record Judgement(Map<Setting, String> set) {
  /** Nothing set. */
  public static final Judgement DEFAULT = new Judgement(Map.of());

  /**
   * Keeps what is within the ranges.
   *
   * @throws hankbook.measure.Unreadable if something is not
   */
  public Judgement {
    Map<Setting, String> tidied = new EnumMap<>(Setting.class);
    set.forEach((setting, content) -> tidied.put(setting, setting.tidy(content)));
    set = Map.copyOf(tidied);
  }

  /** The same with one setting changed. */
  public Judgement with(Setting setting, String content) {
    Map<Setting, String> changed = new EnumMap<>(Setting.class);
    changed.putAll(set);
    changed.put(setting, content);
    return new Judgement(changed);
  }

  /** What holds, set or default, as text. */
  public String text(Setting setting) {
    return set.getOrDefault(setting, setting.standard());
  }

  /** What holds of a setting that is a percentage. */
  public Percentage percentage(Setting setting) {
    return Percentage.parse(text(setting));
  }

  /** How far measurements are trusted. */
  public Doubts doubts() {
    return new Doubts(percentage(Setting.LABEL), Mass.parse(text(Setting.BALANCE)), percentage(Setting.GRIST), percentage(Setting.TURNS));
  }

  /** The shortest remnant that is woven from. */
  public Length usefulRemnant() {
    return Length.parse(text(Setting.REMNANT));
  }

  /** The currency of the house; empty where it is the one in which its yarn was paid. */
  public Optional<CurrencyUnit> currency() {
    return Optional.of(text(Setting.CURRENCY)).filter(text -> !text.equals(Setting.CURRENCY.standard())).map(CurrencyUnit::of);
  }

  /** How far the grist of a stand-in may lie from that of the yarn it stands for. */
  public Percentage standInGrist() {
    return percentage(Setting.STAND_IN_GRIST);
  }

  /** How far the sett that a reed gives may lie from the plan's. */
  public BigFraction settTolerance() {
    return percentage(Setting.SETT).fraction();
  }

  /** What holds of a setting that is money, where any is set. */
  public Optional<Money> money(Setting setting) {
    return Optional.of(text(setting)).filter(text -> !text.equals(SettingKind.NOT_SET)).map(MoneyText::parse);
  }

  /** What holds of a setting that is a time. */
  public Duration duration(Setting setting) {
    return DurationText.parse(text(setting));
  }
}
