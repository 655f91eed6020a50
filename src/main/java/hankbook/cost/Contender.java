package hankbook.cost;

import hankbook.allot.Cover;
import hankbook.allot.PlanCheck;
import hankbook.allot.Risk;
import hankbook.allot.Verdict;
import hankbook.yarn.YarnColour;
import java.time.Duration;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.joda.money.Money;

/**
 * A plan that is held beside others.
 *
 * @param name by which it is told from the others
 * @param check of it against what it may use
 * @param cost of it by that check
 */
public record Contender(String name, PlanCheck check, PlanCost cost) {
  /** How it stands: as the worst of its yarns. */
  Verdict verdict() {
    return check.covers().stream().map(Cover::verdict).max(Comparator.naturalOrder()).orElse(Verdict.COVERED);
  }

  /** The highest risk that one of its yarns runs short. */
  Risk risk() {
    return check.covers().stream().map(Cover::chance).max(Comparator.comparingDouble(Risk::chance)).orElse(new Risk(0));
  }

  /** Its warp's yarns, then its weft's. */
  Stream<YarnColour> yarns() {
    return check.covers().stream().map(Cover::yarn);
  }

  Optional<Cover> cover(YarnColour yarn) {
    return check.covers().stream().filter(cover -> cover.yarn().equals(yarn)).findFirst();
  }

  /** The yarns of which it needs more than there is. */
  Stream<YarnColour> bought() {
    return cost.purchases().stream().map(purchase -> purchase.yarn());
  }

  /** Whole put-ups to buy of a yarn: none where it is not short; not known where nothing shows how it is put up. */
  Figure putUps(YarnColour yarn) {
    return cost.purchases().stream()
        .filter(purchase -> purchase.yarn().equals(yarn))
        .findFirst()
        .<Figure>map(purchase -> purchase.putUps().isPresent() ? new Figure.Count(purchase.putUps().getAsInt()) : new Figure.Unknown())
        .orElse(new Figure.Count(0));
  }

  /** What is to be spent now; not known where the price of something to buy is not. */
  Figure spending() {
    boolean known = cost.purchases().stream().allMatch(purchase -> purchase.total().filter(price -> price.getCurrencyUnit().equals(cost.currency())).isPresent());
    return known ? new Figure.Amount(cost.spendNow()) : new Figure.Unknown();
  }

  /** What one piece costs, where all are of one kind. */
  Optional<Money> each() {
    List<PieceCost> pieces = cost.pieces();
    return pieces.size() == 1 ? Optional.of(pieces.getFirst().each()) : Optional.empty();
  }

  /** How long all work on it takes; not known where no time of any is. */
  Figure time() {
    Duration all = cost.work().stream().map(Labour::time).reduce(Duration.ZERO, Duration::plus);
    return all.isZero() ? new Figure.Unknown() : new Figure.Time(all);
  }

  /** Whether the cost of all its yarn is known, so that its total can be held against others. */
  boolean isCosted() {
    return cost.uncounted().stream().noneMatch(left -> left.kind() == Uncounted.Kind.YARN);
  }
}
