package hankbook.cost;

import hankbook.allot.PutUp;
import hankbook.measure.Percentage;
import hankbook.measure.Phrase;
import hankbook.measure.Unreadable;
import hankbook.plan.WorkKind;
import hankbook.yarn.YarnColour;
import java.time.Duration;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import org.joda.money.Money;

/**
 * How a plan is to be costed otherwise than it is set.
 *
 * @param prices of put-ups, by yarn; also for skeins whose cost is not known, where the length of a put-up is named too
 * @param rate of every hour
 * @param times for each end, pick or piece
 * @param overhead on yarn and work together
 * @param planOverhead on the plan
 * @param pricing how a price is made of the cost; without it there is none
 */
public record CostWish(
    Map<YarnColour, PutUp> prices, Optional<Money> rate, Map<WorkKind, Duration> times, Optional<Percentage> overhead, Optional<Money> planOverhead,
    Optional<Pricing> pricing) {
  /** Nothing otherwise, and no price. */
  public static final CostWish AS_SET = new CostWish(Map.of(), Optional.empty(), Map.of(), Optional.empty(), Optional.empty(), Optional.empty());

  public CostWish {
    prices = Map.copyOf(prices);
    times = Map.copyOf(times);
    if (overhead.filter(part -> part.base() != Percentage.Base.UNSAID).isPresent()) {
      throw new Unreadable(overhead.get().toString(), "a percentage such as 10 %");
    }
  }

  /** The same, but where another says something, as that says it. */
  public CostWish but(CostWish other) {
    Map<YarnColour, PutUp> allPrices = new HashMap<>(prices);
    allPrices.putAll(other.prices);
    Map<WorkKind, Duration> allTimes = new HashMap<>(times);
    allTimes.putAll(other.times);
    return new CostWish(
        allPrices, other.rate.or(() -> rate), allTimes, other.overhead.or(() -> overhead), other.planOverhead.or(() -> planOverhead),
        other.pricing.or(() -> pricing));
  }

  /** The rates as this has them. */
  public Rates over(Rates set) {
    Rates rates = rate.map(set::withHourly).orElse(set);
    Map<WorkKind, UnitTime> all = new HashMap<>(rates.times());
    times.forEach((kind, each) -> all.put(kind, new UnitTime(each, Phrase.of("as named"))));
    return new Rates(all, rates.hourly());
  }
}
