package hankbook.cli;

import hankbook.allot.Feed;
import hankbook.allot.Stint;
import hankbook.allot.WindingSheet;
import hankbook.measure.Length;
import hankbook.measure.LengthUnit;
import hankbook.plan.Bout;
import java.util.ArrayList;
import java.util.List;

/** A winding sheet as a page to read. */
final class WindingReport {
  private WindingReport() {}

  static String of(WindingSheet sheet, int planned) {
    List<String> lines = new ArrayList<>();
    lines.add(sheet.check().plan().name() + ": winding sheet");
    lines.add("");
    lines.add(
        sheet.ends() + " ends of " + sheet.check().yardage().warp().total().print(LengthUnit.METRE, 2) + " in " + sheet.passes() + " passes along the warping path, "
            + metres(sheet.length()) + " of yarn to wind.");
    if (planned != sheet.wish().threads()) {
      String choice = "The skeins are chosen for " + sheet.wish().threads() + " threads together, while the plan winds " + planned;
      lines.add(choice + "; let the plan say " + sheet.wish().threads() + " before you reserve.");
    }
    lines.add("");
    lines.add("In the order of the warp:");
    lines.addAll(new StepLines(sheet.warp(), 1).lines());
    if (!sheet.spare().isEmpty()) {
      lines.add("Beside it, for repairs:");
      lines.addAll(new StepLines(sheet.spare(), 1 + sheet.warp().stream().mapToInt(step -> step.passes().size()).sum()).lines());
    }
    sheet.feeds().forEach(feed -> feed(lines, sheet, feed));
    bouts(lines, sheet);
    return String.join(System.lineSeparator(), lines);
  }

  private static void feed(List<String> lines, WindingSheet sheet, Feed feed) {
    lines.add("");
    lines.add(
        feed.kind().yarn() + ": " + count(feed.ends(), "end", "ends") + " of " + metres(feed.kind().perEnd()) + ", " + metres(feed.length()) + " in "
            + count(feed.passes(), "pass", "passes") + ", " + (feed.threads() == 1 ? "one thread at a time" : "up to " + feed.threads() + " threads together"));
    if (feed.unfed() > 0) {
      lines.add("  " + count(feed.unfed(), "end has", "ends have") + " no skein on the shelf, so no skein is assigned yet.");
    } else if (sheet.fewerThanWished(feed)) {
      lines.add("  " + sheet.wish().threads() + " together is not possible from the skeins it is allotted: one would have to feed two threads at once.");
    }
    List<Stint> stints = feed.stints();
    for (int i = 0; i < stints.size(); i++) {
      Stint before = i > 0 && stints.get(i - 1).position() == stints.get(i).position() ? stints.get(i - 1) : null;
      lines.add(before == null ? begins(stints.get(i)) : changes(before, stints.get(i)));
    }
  }

  private static String begins(Stint stint) {
    String from = stint.firstPass() == 1 ? "" : " from pass " + stint.firstPass();
    return "  position " + stint.position() + ": " + stint.skein() + from + ", " + count(stint.ends(), "end", "ends");
  }

  private static String changes(Stint before, Stint next) {
    String from = next.firstPass() == before.lastPass() + 1 ? "" : " for pass " + next.firstPass();
    return "      after pass " + before.lastPass() + " position " + next.position() + " changes from " + before.skein() + " to " + next.skein() + from + ", "
        + count(next.ends(), "end", "ends");
  }

  private static void bouts(List<String> lines, WindingSheet sheet) {
    lines.add("");
    lines.add(count(sheet.bouts().size(), "bout", "bouts") + " of at most " + sheet.wish().bout() + " ends; the counting thread crosses every " + sheet.wish().group() + " ends:");
    TextTable table = new TextTable("bout", ">passes", ">ends", "counting groups");
    int number = 0;
    for (Bout bout : sheet.bouts()) {
      number++;
      WindingSheet.Counted counted = sheet.counted(bout);
      String over = counted.over() == 0 ? "" : " and " + counted.over();
      table.row(Integer.toString(number), bout.firstPass() + "-" + bout.lastPass(), Integer.toString(bout.ends()), counted.groups() + " of " + sheet.wish().group() + over);
    }
    table.lines().forEach(line -> lines.add("  " + line));
  }

  private static String count(int count, String one, String more) {
    return count + " " + (count == 1 ? one : more);
  }

  private static String metres(Length length) {
    return length.print(LengthUnit.METRE, 2);
  }
}
