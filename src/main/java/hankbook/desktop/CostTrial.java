package hankbook.desktop;

import hankbook.allot.PutUp;
import hankbook.cost.CostWish;
import hankbook.measure.Percentage;
import hankbook.plan.Plan;
import hankbook.plan.PlanVariants;
import hankbook.studio.CostedPlan;
import hankbook.studio.YarnToPrice;
import hankbook.yarn.YarnColour;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;

/** What a plan is costed by otherwise, as it is being typed: rates, prices, overheads and how many pieces. Nothing of it is kept. */
final class CostTrial {
  /** A yarn's price as it is being typed. */
  record YarnPrice(YarnToPrice yarn, TypedValue<PutUp> price) {}

  private final Runnable changed;
  private final TypedValue<Money> rate;
  private final TypedValue<Percentage> overhead;
  private final TypedValue<Integer> pieces;
  private final ReadOnlyObjectWrapper<List<YarnPrice>> prices = new ReadOnlyObjectWrapper<>(List.of());
  private CurrencyUnit currency = CurrencyUnit.EUR;

  CostTrial(Runnable changed) {
    this.changed = changed;
    this.rate = new TypedValue<>(text -> CostTyped.amount(text, currency), changed);
    this.overhead = new TypedValue<>(CostTyped::percentage, changed);
    this.pieces = new TypedValue<>(CostTyped::pieces, changed);
  }

  /** What every hour costs. */
  TypedValue<Money> rate() {
    return rate;
  }

  /** Overheads on yarn and work. */
  TypedValue<Percentage> overhead() {
    return overhead;
  }

  /** How many of the first kind of piece. */
  TypedValue<Integer> pieces() {
    return pieces;
  }

  /** The prices of yarns that may be named for the plan. */
  ReadOnlyObjectProperty<List<YarnPrice>> pricesProperty() {
    return prices.getReadOnlyProperty();
  }

  /** Follows a plan as it is costed: what is typed for a yarn that is still in question stays. */
  void follow(CostedPlan costed) {
    currency = costed.cost().currency();
    List<YarnToPrice> wanted = costed.yarnsToPrice();
    if (!wanted.equals(prices.get().stream().map(YarnPrice::yarn).toList())) {
      Map<YarnColour, String> typed = new HashMap<>();
      prices.get().forEach(price -> typed.put(price.yarn().yarn(), price.price().textProperty().get()));
      prices.set(wanted.stream().map(yarn -> price(yarn, typed.getOrDefault(yarn.yarn(), ""))).toList());
    }
  }

  private YarnPrice price(YarnToPrice yarn, String text) {
    TypedValue<PutUp> price = new TypedValue<>(typed -> CostTyped.putUp(typed, yarn, currency), changed);
    price.textProperty().set(text);
    return new YarnPrice(yarn, price);
  }

  void clear() {
    typed().forEach(value -> value.textProperty().set(""));
  }

  /** Whether nothing is typed. */
  boolean isNothing() {
    return typed().allMatch(value -> value.textProperty().get().isBlank());
  }

  /** Whether something cannot be read. */
  boolean isBad() {
    return typed().anyMatch(TypedValue::isBad);
  }

  private Stream<TypedValue<?>> typed() {
    return Stream.concat(Stream.of(rate, overhead, pieces), prices.get().stream().map(YarnPrice::price));
  }

  /** What can be read of it. */
  CostWish wish() {
    Map<YarnColour, PutUp> named = new HashMap<>();
    prices.get().forEach(price -> price.price().value().ifPresent(putUp -> named.put(price.yarn().yarn(), putUp)));
    return new CostWish(named, rate.value(), Map.of(), overhead.value(), Optional.empty(), Optional.empty());
  }

  /** The plan with as many pieces as are tried; empty where that is no other plan. */
  Optional<Plan> instead(Plan plan) {
    return pieces.value().filter(_ -> !plan.pieces().isEmpty()).map(count -> PlanVariants.withPieces(plan, 0, count)).filter(other -> !other.equals(plan));
  }
}
