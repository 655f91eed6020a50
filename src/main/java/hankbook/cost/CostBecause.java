package hankbook.cost;

import hankbook.plan.Amount;
import hankbook.plan.Because;
import hankbook.plan.Combined;
import hankbook.plan.Term;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Why a plan costs what it does: every line of its cost, down to skeins, times and rates. */
public final class CostBecause {
  private final PlanCost cost;
  private final Costing costing;

  private CostBecause(PlanCost cost, Costing costing) {
    this.cost = cost;
    this.costing = costing;
  }

  /**
   * A line of a plan's cost.
   *
   * @param costing by which it was costed
   * @param line of it, the total too
   */
  public static Because of(PlanCost cost, Costing costing, CostLine line) {
    return new CostBecause(cost, costing).of(line);
  }

  /** What one piece of a kind costs: its part of what all cost, down to the smallest coin. */
  public static Because each(PieceCost piece) {
    List<Because> parts = List.of(Because.given(Term.COST_OF_PIECES, piece.name(), Amount.Coins.of(piece.all())), Because.given(Term.PIECES, Amount.Count.of(piece.count())));
    Because exact = Because.made(Term.COST_EACH_EXACT, piece.name(), number -> new Amount.Coins(number, piece.all().getCurrencyUnit()), Combined.QUOTIENT, parts);
    return Because.made(Term.COST_EACH, piece.name(), number -> new Amount.Coins(number, piece.all().getCurrencyUnit()), Combined.DOWN, List.of(exact));
  }

  private Because of(CostLine line) {
    if (!line.parts().isEmpty()) {
      return new Because(Term.COST, line.name(), Amount.Coins.of(line.amount()), Combined.SUM, line.parts().stream().map(this::of).toList());
    }
    Optional<Labour> work = cost.work().stream().filter(labour -> labour.kind().key().equals(line.key()) && labour.hourly().isPresent()).findFirst();
    return work.map(labour -> ofWork(line, labour)).or(() -> ofYarn(line)).orElseGet(() -> overhead(line));
  }

  private static Because ofWork(CostLine line, Labour labour) {
    List<Because> parts = List.of(
        Because.given(Term.WORK_COUNT, Amount.Count.of(labour.count())), Because.given(Term.WORK_TIME, labour.unit().from(), Amount.Hours.of(labour.unit().each())),
        Because.given(Term.HOURLY, Amount.Coins.of(labour.hourly().orElseThrow())));
    Because exact = Because.made(Term.WORK_EXACT, "", number -> new Amount.Coins(number, line.amount().getCurrencyUnit()), Combined.PRODUCT, parts);
    return new Because(Term.WORK_COST, line.name(), Amount.Coins.of(line.amount()), Combined.RULE, List.of(exact));
  }

  /** What was paid is shared over lengths by the book of costs, which knows the last metre's coin. */
  private Optional<Because> ofYarn(CostLine line) {
    return line.length().map(length -> {
      List<Because> parts = new ArrayList<>(List.of(Because.given(Term.YARN_COSTED, Amount.Stretch.of(length))));
      for (Worth held : costing.worths().getOrDefault(line.key(), List.of())) {
        parts.add(Because.given(Term.PAID, line.key(), Amount.Coins.of(held.cost())));
        parts.add(Because.given(Term.PAID_LENGTH, line.key(), Amount.Stretch.of(held.length())));
      }
      return new Because(Term.COST_OF_YARN, line.name(), Amount.Coins.of(line.amount()), Combined.RULE, parts);
    });
  }

  private Because overhead(CostLine line) {
    if (!line.key().equals(PlanCost.PERCENTAGE)) {
      return Because.given(Term.COST_GIVEN, line.name(), Amount.Coins.of(line.amount()));
    }
    List<Because> before = new ArrayList<>();
    cost.total().parts().stream().filter(part -> !part.key().equals(PlanCost.OVERHEADS)).forEach(part -> before.add(of(part)));
    Because both = Because.sum(Term.YARN_AND_WORK, "", number -> new Amount.Coins(number, cost.currency()), before);
    Because exact = Because.made(
        Term.OVERHEAD_EXACT, "", number -> new Amount.Coins(number, cost.currency()), Combined.PRODUCT,
        List.of(both, Because.given(Term.OVERHEAD_PART, new Amount.Factor(costing.overhead().fraction()))));
    return Because.made(Term.OVERHEAD, line.name(), number -> new Amount.Coins(number, cost.currency()), Combined.NEAREST, List.of(exact));
  }
}
