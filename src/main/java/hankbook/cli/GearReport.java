package hankbook.cli;

import hankbook.exchange.TextTable;
import hankbook.gear.Loom;
import hankbook.gear.Reed;
import hankbook.measure.Length;
import hankbook.measure.LengthUnit;
import hankbook.plan.SettChange;
import hankbook.reckon.Finding;
import hankbook.reckon.Findings;
import hankbook.studio.Learnt;
import java.util.ArrayList;
import java.util.List;

/** Looms and reeds, and what a change of sett does, as pages to read. */
final class GearReport {
  private GearReport() {}

  /** A loom that finished plans were woven on says what it was found to waste. */
  static String looms(List<Loom> looms, Findings learnt) {
    if (looms.isEmpty()) {
      return "No loom yet; loom add enters one.";
    }
    boolean told = looms.stream().anyMatch(loom -> Learnt.waste(learnt, loom.name()).isPresent());
    TextTable table = new TextTable("loom", ">width", ">waste", ">shafts", told ? "learnt waste" : "");
    looms.forEach(loom -> table.row(
        loom.name(), centimetres(loom.width()), centimetres(loom.waste()), Integer.toString(loom.shafts()), Learnt.waste(learnt, loom.name()).map(GearReport::waste).orElse("")));
    return page(table.lines());
  }

  private static String waste(Finding finding) {
    String mean = finding.which().unit().print(finding.mean());
    return mean + (finding.count() == 1 ? ", one plan only" : ", " + finding.count() + " plans, " + finding.range());
  }

  static String reeds(List<Reed> reeds) {
    if (reeds.isEmpty()) {
      return "No reed yet; reed add enters one.";
    }
    TextTable table = new TextTable("reed", ">dents", ">width");
    reeds.forEach(reed -> table.row(reed.name(), reed.dents().toString(), reed.width().map(GearReport::centimetres).orElse("any")));
    return page(table.lines());
  }

  static String resleyed(String plan, SettChange change, boolean kept) {
    TextTable table = new TextTable("", ">sett", ">in the reed", ">finished");
    row(table, "before", change.before());
    row(table, "after", change.after());
    List<String> lines = new ArrayList<>(List.of(plan + ": " + change.ends() + " ends stay, and the width moves."));
    lines.add("");
    lines.addAll(table.lines());
    lines.add("");
    for (SettChange.WeftChange weft : change.wefts()) {
      String moves = weft.more().isZero() ? "as before" : metres(weft.more().isNegative() ? weft.more().negated() : weft.more()) + (weft.more().isNegative() ? " less" : " more");
      lines.add("Weft " + weft.yarn() + ": " + metres(weft.after()) + ", " + moves + ".");
    }
    lines.add(kept ? "Kept the plan with this sett; its pieces still say the width they had." : "Nothing was changed; --keep keeps the plan with this sett.");
    return page(lines);
  }

  private static void row(TextTable table, String when, SettChange.State state) {
    table.row(when, state.sett().toString(), centimetres(state.inReed()), centimetres(state.finished()));
  }

  static String centimetres(Length length) {
    return length.print(LengthUnit.CENTIMETRE, 1);
  }

  private static String metres(Length length) {
    return length.print(LengthUnit.METRE, 1);
  }

  private static String page(List<String> lines) {
    return String.join(System.lineSeparator(), lines);
  }
}
