package hankbook.cost;

import hankbook.allot.Judgement;
import hankbook.allot.Setting;
import hankbook.measure.Phrase;
import hankbook.plan.WorkKind;
import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import org.joda.money.Money;

/**
 * What work costs and how long it takes.
 *
 * @param times for each end, pick or piece
 * @param hourly what an hour costs, by kind of work; a kind that is not there is not costed
 */
public record Rates(Map<WorkKind, UnitTime> times, Map<WorkKind, Money> hourly) {
  public Rates {
    times = Map.copyOf(times);
    hourly = Map.copyOf(hourly);
  }

  /**
   * Rates and times as they are set. A time that is not set is taken from earlier plans, where they tell it, else it is common practice.
   *
   * @param learnt from earlier plans
   */
  public static Rates of(Judgement judgement, Map<WorkKind, UnitTime> learnt) {
    Map<WorkKind, UnitTime> times = new EnumMap<>(WorkKind.class);
    Map<WorkKind, Money> hourly = new EnumMap<>(WorkKind.class);
    for (WorkKind kind : WorkKind.values()) {
      Setting time = Setting.time(kind);
      boolean set = judgement.set().containsKey(time);
      UnitTime otherwise = new UnitTime(judgement.duration(time), set ? UnitTime.AS_SET : Phrase.of("common practice"));
      times.put(kind, set ? otherwise : learnt.getOrDefault(kind, otherwise));
      judgement.money(Setting.rate(kind)).or(() -> judgement.money(Setting.HOURLY_RATE)).ifPresent(rate -> hourly.put(kind, rate));
    }
    return new Rates(times, hourly);
  }

  /** The same where every hour costs so much. */
  public Rates withHourly(Money rate) {
    Map<WorkKind, Money> all = new EnumMap<>(WorkKind.class);
    for (WorkKind kind : WorkKind.values()) {
      all.put(kind, rate);
    }
    return new Rates(times, all);
  }

  /** What an hour of a kind of work costs, where that is said. */
  Optional<Money> hourly(WorkKind kind) {
    return Optional.ofNullable(hourly.get(kind));
  }
}
