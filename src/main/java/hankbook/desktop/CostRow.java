package hankbook.desktop;

import hankbook.measure.Length;
import hankbook.plan.Because;
import hankbook.yarn.YarnColour;
import java.util.Optional;
import java.util.function.Supplier;
import org.joda.money.Money;

/**
 * One line of what a plan costs.
 *
 * @param name what it is
 * @param depth how far it is set in; what is not set in is a sum
 * @param yarn whose colour is shown beside it
 * @param length of yarn
 * @param detail how it was reckoned, or empty
 * @param now what it is
 * @param then what it would be otherwise
 * @param why what it is made of now; empty where that stands beside it already
 */
record CostRow(
    String name, int depth, Optional<YarnColour> yarn, Optional<Length> length, String detail, Optional<Money> now, Optional<Money> then, Optional<Supplier<Because>> why) {
  /** As it is known by; what is said is in the language of the window. */
  private static final String TOTAL = "total";

  /** So far in stand yarns and colours. */
  static final int NAMED = 2;

  /** All of a cost. */
  static CostRow total(Money now, Optional<Money> then, Optional<Supplier<Because>> why) {
    return new CostRow(TOTAL, 0, Optional.empty(), Optional.empty(), "", Optional.of(now), then, why);
  }

  /** Whether it is all of the cost, and the sum of what stands above it. */
  boolean isTotal() {
    return depth == 0 && name.equals(TOTAL);
  }

  /** Whether the user named it, so that it stays as it is in every language. */
  boolean isNamed() {
    return depth == NAMED;
  }

  static CostRow plain(String name, String detail, Optional<Money> now, Optional<Money> then) {
    return new CostRow(name, 0, Optional.empty(), Optional.empty(), detail, now, then, Optional.empty());
  }

  /** How much more it would be, with its sign; empty where it would be the same. */
  String difference() {
    Optional<Money> either = now.or(() -> then);
    Money zero = either.map(money -> Money.zero(money.getCurrencyUnit())).orElseThrow();
    Money more = then.orElse(zero).minus(now.orElse(zero));
    return more.isZero() ? "" : (more.isPositive() ? "+" : "−") + Wording.amount(more.abs());
  }
}
