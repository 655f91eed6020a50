package hankbook.studio;

import hankbook.allot.Cover;
import hankbook.allot.Judgement;
import hankbook.allot.Purchase;
import hankbook.allot.PutUp;
import hankbook.allot.Setting;
import hankbook.cost.Comparison;
import hankbook.cost.CostBecause;
import hankbook.cost.CostLine;
import hankbook.cost.CostWish;
import hankbook.cost.Costing;
import hankbook.cost.PlanCost;
import hankbook.cost.PlanSpent;
import hankbook.cost.Price;
import hankbook.cost.Rates;
import hankbook.cost.UnitTime;
import hankbook.cost.Worth;
import hankbook.exchange.BadInput;
import hankbook.measure.Exact;
import hankbook.plan.Because;
import hankbook.plan.Plan;
import hankbook.plan.WorkKind;
import hankbook.reckon.Offer;
import hankbook.yarn.Skein;
import hankbook.yarn.YarnColour;
import java.math.RoundingMode;
import java.time.Duration;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;

/** A plan held against the skeins that are free for it, and what it costs. */
public final class CostedPlan {
  private static final long MILLISECONDS = 1_000;

  private final String source;
  private final Answer answer;
  private final CostMeans means;
  private final CostWish wish;
  private final CurrencyUnit currency;
  private final Costing costing;
  private final PlanCost cost;
  private final List<String> atNamedPrice = new ArrayList<>();

  private CostedPlan(String source, Answer answer, CostMeans means, CostWish wish) throws BadInput {
    this.source = source;
    this.answer = answer;
    this.means = means;
    this.wish = wish;
    this.currency = currency(answer.judgement(), means, wish);
    this.costing = Answer.reckoned(source, this::costing);
    this.cost = Answer.reckoned(source, () -> PlanCost.of(answer.check(), answer.stock(), costing));
  }

  /**
   * Costs a plan.
   *
   * @param source what the plan was read from, for messages
   * @throws BadInput where its numbers are too large, or a price is named of a yarn that is not its own
   */
  static CostedPlan of(String source, Answer answer, CostMeans means, CostWish wish) throws BadInput {
    refuseStrangers(source, answer, wish);
    return new CostedPlan(source, answer, means, wish);
  }

  private static void refuseStrangers(String source, Answer answer, CostWish wish) throws BadInput {
    List<YarnColour> own = answer.check().covers().stream().map(Cover::yarn).toList();
    Optional<YarnColour> stranger = wish.prices().keySet().stream().filter(yarn -> !own.contains(yarn)).sorted().findFirst();
    if (stranger.isPresent()) {
      String yarns = own.stream().map(yarn -> yarn.yarn() + ", " + yarn.colour()).collect(Collectors.joining("; "));
      throw new BadInput(source + ": found a price of " + stranger.get().yarn() + ", " + stranger.get().colour() + ", wanted one of a yarn of the plan: " + yarns);
    }
  }

  private Costing costing() {
    Judgement judgement = answer.judgement();
    List<Purchase> purchases = Purchase.of(answer.check(), answer.stock(), judgement, wish.prices());
    return new Costing(
        currency, worths(), purchases, wish.over(Rates.of(judgement, learnt())), wish.overhead().orElseGet(() -> judgement.percentage(Setting.OVERHEAD)),
        wish.planOverhead().or(() -> judgement.money(Setting.PLAN_OVERHEAD)), judgement.usefulRemnant());
  }

  /** How long work took in earlier plans, where they tell it. */
  private Map<WorkKind, UnitTime> learnt() {
    Map<WorkKind, UnitTime> times = new EnumMap<>(WorkKind.class);
    for (Offer offer : answer.offers()) {
      Duration each = Duration.ofMillis(Exact.whole(offer.value().multiply(MILLISECONDS), RoundingMode.HALF_UP));
      offer.which().work().ifPresent(kind -> times.put(kind, new UnitTime(each, offer.reason())));
    }
    return times;
  }

  /** A skein whose cost is not known counts at the price that was named for its yarn, where the length of a put-up was named too. */
  private Map<String, List<Worth>> worths() {
    Map<String, List<Worth>> worths = new HashMap<>(means.worths());
    for (Skein skein : answer.stock()) {
      PutUp named = wish.prices().get(skein.yarn());
      if (named != null && named.holds().isPresent() && !worths.containsKey(skein.code()) && skein.holds().isPositive()) {
        var coins = skein.holds().exactTenths().divide(named.holds().get().exactTenths()).multiply(named.each().getAmountMinorLong());
        worths.put(skein.code(), List.of(new Worth(skein.holds(), Money.ofMinor(named.each().getCurrencyUnit(), Exact.whole(coins, RoundingMode.HALF_UP)))));
        atNamedPrice.add(skein.code());
      }
    }
    return worths;
  }

  private static CurrencyUnit currency(Judgement judgement, CostMeans means, CostWish wish) {
    Stream<Money> said = Stream.concat(
        Stream.concat(wish.rate().stream(), wish.planOverhead().stream()), wish.prices().values().stream().map(PutUp::each));
    Stream<Money> set = Stream.of(Setting.values()).filter(Setting::isMoney).flatMap(setting -> judgement.money(setting).stream());
    return means.currency().or(() -> Stream.concat(said, set).findFirst().map(Money::getCurrencyUnit)).orElse(CurrencyUnit.EUR);
  }

  /** The plan against the shelf. */
  public Answer answer() {
    return answer;
  }

  /** What it costs. */
  public PlanCost cost() {
    return cost;
  }

  /** Why a line of it costs what it does. */
  public Because because(CostLine line) {
    return CostBecause.of(cost, costing, line);
  }

  /** What it is to be sold for, where that was asked. */
  public Optional<Price> price() {
    return wish.pricing().map(cost::price);
  }

  /** What its yarn has cost so far; empty before any was drawn. */
  public Optional<PlanSpent> spent() {
    return means.spent();
  }

  /** The skeins it takes from that are costed at a price that was named, since it is not known what was paid for them. */
  public List<String> atNamedPrice() {
    return answer.check().shares().stream().map(share -> share.code()).filter(atNamedPrice::contains).toList();
  }

  /** The yarns of the plan whose price may be named: those still to buy, and those of which it is not known what was paid. */
  public List<YarnToPrice> yarnsToPrice() {
    return YarnToPrice.of(answer, cost.purchases(), code -> !means.worths().containsKey(code));
  }

  /**
   * The same, costed otherwise: nothing is read from the ledger anew.
   *
   * @param from what the other was read from, for messages
   * @param other another plan in its place
   * @param otherwise in which the rest stays as it was costed
   * @throws BadInput where the other plan does not add up, or a price is named of a yarn that is not its own
   */
  public CostedPlan instead(String from, Optional<Plan> other, CostWish otherwise) throws BadInput {
    Answer changed = other.isEmpty() ? answer : Answer.of(from, other.get(), answer.means());
    refuseStrangers(from, changed, otherwise);
    return new CostedPlan(other.isEmpty() ? source : from, changed, means, wish.but(otherwise));
  }

  /**
   * This laid beside another, line by line.
   *
   * @throws hankbook.measure.Unreadable if they are of two currencies
   */
  public Comparison beside(CostedPlan other) {
    return Comparison.of(cost, other.cost);
  }
}
