package hankbook.cli;

import hankbook.exchange.TextTable;
import hankbook.measure.Exact;
import hankbook.measure.Length;
import hankbook.measure.LengthUnit;
import hankbook.reckon.Cause;
import hankbook.reckon.Reckoning;
import hankbook.reckon.YarnAccount;
import hankbook.studio.YarnWent;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.apache.commons.numbers.fraction.BigFraction;

/** Where the yarn of a plan went, as a page to read. */
final class UsedReport {
  private UsedReport() {}

  static String page(YarnWent.Went went) {
    List<String> lines = new ArrayList<>();
    lines.add(went.finished().plan() + ": what it used against the plan " + went.against().words() + "." + edited(went));
    for (YarnAccount yarn : went.reckoning().yarns()) {
      lines.add("");
      lines.addAll(yarn(yarn));
    }
    lines.add("");
    lines.addAll(causes(went.reckoning()));
    lines.add("");
    lines.addAll(ReallyReport.lines(went.made(), went.reckoning().really()));
    return String.join(System.lineSeparator(), lines);
  }

  private static String edited(YarnWent.Went went) {
    if (!went.isEdited()) {
      return "";
    }
    boolean reserved = went.against() == YarnWent.Against.RESERVED;
    return " It was edited " + (reserved ? "since: see also --as edited." : "after its yarn was taken: see also --as reserved.");
  }

  private static List<String> yarn(YarnAccount yarn) {
    List<String> lines = new ArrayList<>();
    lines.add(yarn.yarn() + ": " + metres(yarn.planned()) + " planned, " + metres(yarn.used()) + " used" + more(yarn) + ".");
    lines.addAll(waterfall(yarn));
    String purposes =
        yarn.purposes().entrySet().stream().filter(part -> !part.getValue().isZero()).map(part -> part.getKey().words() + " " + metres(part.getValue())).collect(Collectors.joining(", "));
    lines.add(purposes.isEmpty() ? "  The plan does not name it." : "  Planned for " + purposes + ".");
    return lines;
  }

  private static String more(YarnAccount yarn) {
    if (yarn.more().isZero()) {
      return "";
    }
    Length difference = yarn.more().isNegative() ? yarn.more().negated() : yarn.more();
    BigFraction part = yarn.planned().isPositive() ? difference.exactTenths().divide(yarn.planned().exactTenths()) : BigFraction.ZERO;
    String percent = yarn.planned().isPositive() ? " (" + Exact.plain(part.multiply(100), 1) + " %)" : "";
    return ", " + metres(difference) + (yarn.more().isNegative() ? " less" : " more") + percent;
  }

  private static List<String> waterfall(YarnAccount yarn) {
    Waterfall picture = new Waterfall(yarn.planned(), yarn.steps().stream().map(YarnAccount.Step::after).toList());
    TextTable table = new TextTable("", ">metres", ">comes to", "");
    table.row("  planned", "", number(yarn.planned()), picture.mark(yarn.planned()));
    yarn.steps().forEach(step -> table.row("  " + step.cause().words(), signed(step.part()), number(step.after()), picture.bar(step.before(), step.after())));
    table.row("  used", "", number(yarn.used()), picture.mark(yarn.used()));
    return table.lines();
  }

  /** All yarns together, the causes that anything is known of. */
  private static List<String> causes(Reckoning reckoning) {
    TextTable table = new TextTable("in all yarns", ">metres");
    table.row("  planned", number(reckoning.planned()));
    for (Cause cause : Cause.values()) {
      if (reckoning.yarns().stream().anyMatch(yarn -> !yarn.part(cause).isZero())) {
        table.row("  " + cause.words(), signed(reckoning.part(cause)));
      }
    }
    table.row("  used", number(reckoning.used()));
    return table.lines();
  }

  private static String signed(Length length) {
    return length.isPositive() ? "+" + number(length) : number(length);
  }

  private static String number(Length length) {
    return Exact.decimal(length.in(LengthUnit.METRE), 2, RoundingMode.HALF_UP).toPlainString();
  }

  private static String metres(Length length) {
    return length.print(LengthUnit.METRE, 2);
  }
}
