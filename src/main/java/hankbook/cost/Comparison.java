package hankbook.cost;

import hankbook.measure.Phrase;
import hankbook.measure.Unreadable;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.joda.money.Money;

/**
 * A line of two costs, side by side.
 *
 * @param key of the line
 * @param name of the line
 * @param now what it is; empty where only the other has the line
 * @param then what it would be; empty where the other has no such line
 * @param parts in the order of what is, then what only the other has
 */
public record Comparison(String key, String name, Optional<Money> now, Optional<Money> then, List<Comparison> parts) {
  public Comparison {
    parts = List.copyOf(parts);
  }

  /**
   * Lays two costs side by side, line by line.
   *
   * @throws Unreadable if they are of two currencies
   */
  public static Comparison of(PlanCost now, PlanCost then) {
    if (!now.currency().equals(then.currency())) {
      throw new Unreadable(then.currency().toString(), Phrase.of("costs in {0}, to be laid beside each other", now.currency()));
    }
    return of(Optional.of(now.total()), Optional.of(then.total()));
  }

  private static Comparison of(Optional<CostLine> now, Optional<CostLine> then) {
    CostLine either = now.or(() -> then).orElseThrow();
    List<CostLine> left = new ArrayList<>(then.map(CostLine::parts).orElse(List.of()));
    List<Comparison> parts = new ArrayList<>();
    for (CostLine part : now.map(CostLine::parts).orElse(List.of())) {
      Optional<CostLine> match = left.stream().filter(other -> other.key().equals(part.key())).findFirst();
      match.ifPresent(left::remove);
      parts.add(of(Optional.of(part), match));
    }
    left.forEach(only -> parts.add(of(Optional.empty(), Optional.of(only))));
    return new Comparison(either.key(), either.name(), now.map(CostLine::amount), then.map(CostLine::amount), parts);
  }

  /** How much more it would be; under zero where it would be less. The differences of the parts sum to it. */
  public Money difference() {
    Money zero = Money.zero(now.or(() -> then).orElseThrow().getCurrencyUnit());
    return then.orElse(zero).minus(now.orElse(zero));
  }

  /** Whether it would be another sum. */
  public boolean differs() {
    return !difference().isZero();
  }
}
