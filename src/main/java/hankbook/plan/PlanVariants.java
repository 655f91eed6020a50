package hankbook.plan;

import hankbook.measure.Length;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;

/** The same plan with one thing changed. */
public final class PlanVariants {
  private PlanVariants() {}

  /** With its ends and warp length given outright; groups counted in ends, outright or by the written order, keep their proportion. */
  public static Plan withWarp(Plan plan, int ends, Length length) {
    Warp old = plan.warp();
    boolean written = old.succession().isPresent();
    if (written && old.succession().get().threads() == old.ordered(ends)) {
      // The written order already makes them; it says more than proportions do.
      return plan.with(old.with(ends, length));
    }
    return plan.with(old.with(ends, length, proportional(counted(old), old.ordered(ends))));
  }

  /** With so many of its only kind of piece. */
  public static Plan withPieces(Plan plan, Piece piece, int count) {
    return plan.with(List.of(new Piece(piece.name(), count, piece.length(), piece.width(), piece.hems(), piece.fringe())));
  }

  /** With other units, which make its ends; where its order does not account for these, its groups keep their proportion. */
  public static Plan withSections(Plan plan, Sections sections) {
    Warp warp = plan.warp();
    int ordered = warp.ordered(Math.addExact(sections.ends(), warp.selvedgeEnds()));
    boolean written = warp.succession().isPresent() && warp.succession().get().threads() == ordered;
    return plan.with(written ? warp.with(sections, warp.order(), warp.succession()) : warp.with(sections, proportional(counted(warp), ordered), Optional.empty()));
  }

  /** The order with the counts that are written for it. */
  private static List<OrderEntry> counted(Warp warp) {
    Optional<Map<String, Long>> counts = warp.succession().map(Succession::counts);
    return counts.map(made -> warp.order().stream().map(entry -> entry.with(new OrderEntry.Ends(Math.toIntExact(made.getOrDefault(entry.mark(), 0L))))).toList())
        .orElse(warp.order());
  }

  private static List<OrderEntry> proportional(List<OrderEntry> order, int ends) {
    long counted = order.stream().mapToLong(PlanVariants::counted).sum();
    boolean shared = order.stream().anyMatch(entry -> entry.amount() instanceof OrderEntry.Share);
    if (counted == 0 || counted == ends || (shared && counted < ends)) {
      return order;
    }
    return order.stream()
        .filter(entry -> entry.amount() instanceof OrderEntry.Ends)
        .map(entry -> entry.with(new OrderEntry.Share(BigFraction.of(counted(entry), counted))))
        .toList();
  }

  private static long counted(OrderEntry entry) {
    return entry.amount() instanceof OrderEntry.Ends ends ? ends.ends() : 0;
  }
}
