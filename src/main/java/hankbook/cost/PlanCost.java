package hankbook.cost;

import hankbook.allot.PlanCheck;
import hankbook.allot.Purchase;
import hankbook.measure.Exact;
import hankbook.measure.Phrase;
import hankbook.plan.Plan;
import hankbook.yarn.Skein;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;

/**
 * What a plan costs before it is begun: the yarn it will use of the skeins that were chosen for it, at what was paid for them; yarn still to buy; work and
 * overheads. Every line is the sum of its parts, to the smallest coin. What stands beside the total is not in it.
 *
 * @param plan that is costed
 * @param total with its parts
 * @param work every kind, costed or not
 * @param pieces the total by kind of piece
 * @param purchases whole put-ups of the yarns that are short
 * @param spendNow what those put-ups cost that have a price in this currency
 * @param remnants what is left of the skeins and put-ups it takes from
 * @param uncounted what has no cost in the total, and why
 */
public record PlanCost(
    Plan plan, CostLine total, List<Labour> work, List<PieceCost> pieces, List<Purchase> purchases, Money spendNow, List<Remnant> remnants,
    List<Uncounted> uncounted) {
  static final String OVERHEADS = "overheads";
  static final String PERCENTAGE = "percentage";

  public PlanCost {
    work = List.copyOf(work);
    pieces = List.copyOf(pieces);
    purchases = List.copyOf(purchases);
    remnants = List.copyOf(remnants);
    uncounted = List.copyOf(uncounted);
  }

  /**
   * Costs a plan.
   *
   * @param check of the plan, against this stock
   */
  public static PlanCost of(PlanCheck check, List<Skein> stock, Costing costing) {
    YarnCosts yarn = new YarnCosts(check, stock, costing);
    WorkCosts work = WorkCosts.of(check.plan(), check.yardage(), costing);
    List<CostLine> lines = new ArrayList<>(List.of(yarn.line()));
    work.line().ifPresent(lines::add);
    overheads(CostLine.ofAll("direct", "Yarn and work", costing.currency(), lines).amount(), costing).ifPresent(lines::add);
    List<Uncounted> uncounted = new ArrayList<>(yarn.uncounted());
    uncounted.addAll(work.uncounted());
    costing.planOverhead().filter(fixed -> !fixed.getCurrencyUnit().equals(costing.currency())).ifPresent(
        fixed -> uncounted.add(new Uncounted(Uncounted.Kind.OVERHEADS, Phrase.of("Overheads of each plan"), Phrase.of("they are in {0}, and this is reckoned in {1}", fixed.getCurrencyUnit(), costing.currency()))));
    CostLine total = CostLine.ofAll("total", "Total", costing.currency(), lines);
    return new PlanCost(
        check.plan(), total, work.labour(), PieceCost.shared(total.amount(), check.plan().pieces()), costing.purchases(), spent(costing), yarn.remnants(), uncounted);
  }

  private static Optional<CostLine> overheads(Money yarnAndWork, Costing costing) {
    List<CostLine> lines = new ArrayList<>();
    if (costing.overhead().fraction().signum() > 0) {
      long coins = Exact.whole(costing.overhead().fraction().multiply(yarnAndWork.getAmountMinorLong()), RoundingMode.HALF_UP);
      lines.add(CostLine.of(PERCENTAGE, costing.overhead() + " of yarn and work", "", Money.ofMinor(costing.currency(), coins)));
    }
    costing.planOverhead().filter(fixed -> fixed.getCurrencyUnit().equals(costing.currency())).ifPresent(
        fixed -> lines.add(CostLine.of("perPlan", "For each plan", "", fixed)));
    return lines.isEmpty() ? Optional.empty() : Optional.of(CostLine.ofAll(OVERHEADS, "Overheads", costing.currency(), lines));
  }

  private static Money spent(Costing costing) {
    return costing.purchases().stream()
        .flatMap(purchase -> purchase.total().stream())
        .filter(cost -> cost.getCurrencyUnit().equals(costing.currency()))
        .reduce(Money.zero(costing.currency()), Money::plus);
  }

  /** The currency of every sum. */
  public CurrencyUnit currency() {
    return total.amount().getCurrencyUnit();
  }

  /** What it is to be sold for. */
  public Price price(Pricing pricing) {
    Money price = pricing.price(total.amount());
    return new Price(pricing, price, PieceCost.shared(price, plan.pieces()));
  }
}
