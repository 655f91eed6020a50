package hankbook.cli;

import hankbook.exchange.TextTable;
import hankbook.measure.Length;
import hankbook.measure.LengthUnit;
import hankbook.plan.PlanChange;
import hankbook.plan.SectionSum;
import hankbook.studio.PlanSections;
import java.util.ArrayList;
import java.util.List;

/** The ends of a plan that are counted in units, as a page to read. */
final class SectionReport {
  private SectionReport() {}

  static String of(SectionSum sum) {
    return String.join(System.lineSeparator(), lines(sum));
  }

  static List<String> lines(SectionSum sum) {
    TextTable table = new TextTable("Section", ">repeats", ">units", ">ends", ">from end", ">to end", ">width", ">reaches");
    for (SectionSum.Row row : sum.rows()) {
      table.row(
          row.name(), Integer.toString(row.repeats()), Integer.toString(row.units()), Integer.toString(row.ends()), Integer.toString(row.first()),
          Integer.toString(row.last()), centimetres(row.width()), centimetres(row.from().plus(row.width())));
    }
    List<String> lines = new ArrayList<>(table.lines());
    String selvedges = sum.selvedgeEnds() == 0 ? "" : ", and " + sum.selvedgeEnds() + " selvedge ends";
    lines.add(
        sum.arithmetic() + " = " + sum.ends() + " ends: section by section " + sum.endsByStretch() + "; " + sum.units() + " units of " + sum.endsPerUnit()
            + " ends " + sum.endsByUnits() + selvedges + ".");
    return lines;
  }

  static String of(PlanSections.Tried tried) {
    PlanChange change = tried.change();
    List<String> lines = new ArrayList<>(lines(tried.after()));
    lines.add("");
    lines.add("Ends " + signed(Integer.toString(change.ends())) + ", in the reed " + signed(centimetres(change.inReed())) + ", finished " + signed(centimetres(change.finished())) + ".");
    change.yarn().forEach((yarn, more) -> lines.add(yarn + " " + signed(more.print(LengthUnit.METRE, 1)) + "."));
    if (change.inProportion()) {
      lines.add("The order as it is written does not account for these ends: each yarn is reckoned in proportion.");
    }
    lines.add("Nothing was changed in the plan.");
    return String.join(System.lineSeparator(), lines);
  }

  private static String signed(String number) {
    return number.startsWith("-") ? number : "+" + number;
  }

  private static String centimetres(Length length) {
    return length.print(LengthUnit.CENTIMETRE, 1);
  }
}
