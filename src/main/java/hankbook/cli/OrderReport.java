package hankbook.cli;

import hankbook.plan.Band;
import hankbook.plan.ClothPattern;
import hankbook.plan.Plan;
import hankbook.plan.SectionSum;
import hankbook.plan.Succession;
import java.util.ArrayList;
import java.util.List;

/** An order in words, with its counts. */
final class OrderReport {
  private OrderReport() {}

  static String of(Succession order, String unit) {
    return order.words() + ": " + order.sumInWords(unit) + ".";
  }

  /** What a plan writes of its order and sections; nothing where it writes none of it. */
  static List<String> of(Plan plan) {
    List<String> lines = new ArrayList<>();
    plan.warp().succession().ifPresent(order -> lines.add("Order of ends: " + of(order, "ends")));
    plan.weftSuccession().ifPresent(order -> {
      long picks = ClothPattern.of(plan).weft().map(Band::count).orElse(0L);
      lines.add("Order of picks: " + of(order, "picks") + " " + repeats(order, picks));
    });
    plan.warp().sections().ifPresent(sections ->
        lines.addAll(SectionReport.lines(SectionSum.of(sections, plan.warp().sett(), plan.warp().selvedgeEnds()))));
    return lines;
  }

  private static String repeats(Succession order, long picks) {
    long whole = picks / order.threads();
    long more = picks % order.threads();
    String left = more == 0 ? "." : " and the first " + more + " picks of the next.";
    return picks + " picks are " + whole + (whole == 1 ? " repeat" : " repeats") + left;
  }
}
