package hankbook.plan;

import hankbook.measure.Length;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.apache.commons.numbers.fraction.BigFraction;

/** The same plan with one thing changed. */
public final class PlanVariants {
  private PlanVariants() {}

  /** With its ends and warp length given outright; groups counted in ends keep their proportion. */
  public static Plan withWarp(Plan plan, int ends, Length length) {
    Warp old = plan.warp();
    Warp warp =
        new Warp(old.sett(), OptionalInt.of(ends), Optional.of(length), old.endsMultiple(), old.selvedgeEnds(), proportional(old.order(), ends));
    return new Plan(plan.name(), plan.pieces(), warp, plan.wefts(), plan.allowances(), plan.threads(), plan.dressing());
  }

  /** With so many of its only kind of piece. */
  public static Plan withPieces(Plan plan, Piece piece, int count) {
    Piece counted = new Piece(piece.name(), count, piece.length(), piece.width(), piece.hems(), piece.fringe());
    return new Plan(plan.name(), List.of(counted), plan.warp(), plan.wefts(), plan.allowances(), plan.threads(), plan.dressing());
  }

  private static List<OrderEntry> proportional(List<OrderEntry> order, int ends) {
    long counted = order.stream().mapToLong(PlanVariants::counted).sum();
    boolean shared = order.stream().anyMatch(entry -> entry.amount() instanceof OrderEntry.Share);
    if (counted == 0 || counted == ends || (shared && counted < ends)) {
      return order;
    }
    return order.stream()
        .filter(entry -> entry.amount() instanceof OrderEntry.Ends)
        .map(entry -> new OrderEntry(entry.yarn(), new OrderEntry.Share(BigFraction.of(counted(entry), counted)), entry.strands()))
        .toList();
  }

  private static long counted(OrderEntry entry) {
    return entry.amount() instanceof OrderEntry.Ends ends ? ends.ends() : 0;
  }
}
