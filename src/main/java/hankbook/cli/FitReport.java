package hankbook.cli;

import hankbook.allot.Fit;
import hankbook.allot.PlanCheck;
import hankbook.allot.Purchase;
import hankbook.measure.LengthUnit;
import java.util.ArrayList;
import java.util.List;

/** What fits, as a page to read. */
final class FitReport {
  private FitReport() {}

  static String of(PlanCheck check, Fit fit) {
    List<String> lines = new ArrayList<>();
    lines.add(check.plan().name());
    lines.add("");
    lines.add("Longest warp for its " + check.yardage().width().ends() + " ends: " + fit.longestWarp().print(LengthUnit.METRE, 2));
    lines.add("Most ends of its " + check.yardage().warp().total().print(LengthUnit.METRE, 2) + ": " + fit.mostEnds());
    fit.mostPieces().ifPresent(most -> lines.add("Most pieces: " + most));
    for (Purchase purchase : fit.buy()) {
      String count = purchase.putUps().isPresent() ? Integer.toString(purchase.putUps().getAsInt()) : "more of it, the shelf shows no put-up to judge by";
      lines.add("To buy of " + purchase.yarn() + ": " + count);
    }
    if (fit.longestWarp().isZero()) {
      lines.add("Even the shortest warp is short of a yarn, in warp or weft: check says which.");
    }
    lines.add("At the most nothing is left over: take less where the metres are not sure.");
    return String.join(System.lineSeparator(), lines);
  }
}
