package hankbook.cli;

import hankbook.exchange.TextTable;
import hankbook.measure.LengthUnit;
import hankbook.studio.Expect;
import hankbook.studio.ExpectedSkein;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/** Yarn on order, as pages to read. */
final class ExpectedReport {
  private ExpectedReport() {}

  static String ordered(Expect.Ordered ordered, LocalDate due) {
    String before = ordered.alreadyThere() == 0 ? "." : "; " + ordered.alreadyThere() + " of the file were on order or had come before.";
    return count(ordered.expected()) + " put on order, expected by " + due + before;
  }

  static String changed(int changed, LocalDate due) {
    return changed == 0 ? "Nothing to change: the ledger says so already." : count(changed) + " expected by " + due + " now.";
  }

  static String list(List<ExpectedSkein> expected, LocalDate today) {
    if (expected.isEmpty()) {
      return "Nothing is on order; expect add puts the skeins of a file on order.";
    }
    TextTable table = new TextTable("code", "yarn", "form", ">length", "expected by");
    expected.forEach(coming -> table.row(
        coming.skein().code(),
        coming.skein().yarn().toString(),
        coming.skein().form().toString(),
        coming.length().print(LengthUnit.METRE, 1),
        coming.due() + (coming.isOverdue(today) ? ", overdue" : "")));
    return String.join(System.lineSeparator(), table.lines());
  }

  /** What a check counted that is not here yet, as lines below it. */
  static List<String> counted(List<ExpectedSkein> counted) {
    if (counted.isEmpty()) {
      return List.of();
    }
    List<String> lines = new ArrayList<>(List.of(""));
    lines.add("Counted though it has not come yet: " + counted.stream().map(coming -> coming.skein().code() + " by " + coming.due()).collect(Collectors.joining(", ")) + ".");
    return lines;
  }

  private static String count(int skeins) {
    return skeins + (skeins == 1 ? " skein" : " skeins");
  }
}
