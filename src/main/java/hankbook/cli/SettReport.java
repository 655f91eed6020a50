package hankbook.cli;

import static hankbook.cli.GearReport.centimetres;

import hankbook.exchange.TextTable;
import hankbook.gear.Reed;
import hankbook.gear.SettAdvice;
import hankbook.gear.SleyChoice;
import hankbook.gear.Sleying;
import hankbook.measure.Exact;
import hankbook.measure.Length;
import hankbook.measure.LengthUnit;
import hankbook.studio.SleyPlan;
import java.util.ArrayList;
import java.util.List;
import org.apache.commons.numbers.fraction.BigFraction;

/** Setts and sleying, as pages to read. */
final class SettReport {
  static final Length INCH = Length.of(1, LengthUnit.INCH);
  static final Length CENTIMETRE = Length.of(1, LengthUnit.CENTIMETRE);

  private SettReport() {}

  static String advice(SettAdvice advice, List<SleyChoice> choices) {
    List<String> lines = new ArrayList<>();
    lines.add(
        "Diameters: " + Exact.plain(advice.diameters().perInch(), 1) + " to the inch with k " + Exact.plain(advice.diameters().factor(), 4)
            + " (0.9 is for worsted and other firm yarn, 0.84 for soft woollen).");
    lines.add("Weave: " + advice.weave() + ", of which " + advice.weave().explained() + " may be ends.");
    lines.add("Fullest sett: " + advice.fullest(INCH) + ", " + advice.fullest(CENTIMETRE) + ".");
    lines.add("Working sett: " + advice.working(INCH) + ", " + advice.working(CENTIMETRE) + ", " + Exact.plain(advice.part(), 3) + " of the fullest.");
    if (!choices.isEmpty()) {
      lines.add("");
      lines.addAll(table(choices));
    }
    return page(lines);
  }

  static String sleyed(SleyPlan.Sleyed sleyed) {
    Sleying sleying = sleyed.sleying();
    List<String> lines = new ArrayList<>();
    lines.add(sleyed.plan() + ": " + sleying.ends() + " ends, to be set " + sleyed.choice().wanted() + ".");
    lines.add("");
    lines.addAll(table(sleyed.choices()));
    lines.add("");
    lines.add("Reed " + sleying.reed().name() + " sleyed " + sleying.sley() + " gives " + sleyed.choice().sett() + ":");
    lines.add("  " + sleying.dents() + " dents, " + repeats(sleying) + ".");
    lines.add("  " + centimetres(sleying.width()) + " wide in the reed, where the plan reckons " + centimetres(sleyed.planned()) + ".");
    lines.add("  " + begin(sleying));
    return page(lines);
  }

  private static String repeats(Sleying sleying) {
    String selvedge = sleying.selvedge().ends() == 0 ? "" : "; " + sleying.selvedge().ends() + " selvedge ends, " + sleying.selvedge().perDent() + " to a dent";
    String left = sleying.leftOver() == 0 ? "none" : Integer.toString(sleying.leftOver());
    return sleying.repeats() + " repeats of the sleying and " + left + " of the ends left over" + selvedge;
  }

  private static String begin(Sleying sleying) {
    String middle = "begin " + centimetres(sleying.fromMiddle()) + " from the middle of the reed";
    return sleying.freeBefore().isPresent()
        ? "To stand in the middle, " + middle + ": leave " + sleying.freeBefore().getAsInt() + " dents free before, " + sleying.freeAfter().orElseThrow() + " after."
        : "To stand in the middle, " + middle + ".";
  }

  private static List<String> table(List<SleyChoice> choices) {
    TextTable table = new TextTable("reed", "sley", ">sett", ">off");
    for (SleyChoice choice : choices) {
      Reed reed = choice.reed();
      table.row(reed.name(), choice.sley().toString(), choice.sett().toString(), Exact.plain(choice.off().multiply(BigFraction.of(100)), 1) + " %");
    }
    return table.lines();
  }

  private static String page(List<String> lines) {
    return String.join(System.lineSeparator(), lines);
  }
}
