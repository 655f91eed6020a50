package hankbook.exchange;

import hankbook.allot.Feed;
import hankbook.allot.WindingSheet;
import hankbook.measure.Phrase;
import hankbook.plan.Bout;
import java.util.ArrayList;
import java.util.List;

/** A winding sheet as a page to read. */
public final class WindingText {
  private WindingText() {}

  /**
   * The whole page.
   *
   * @param planned the threads that the plan winds together
   */
  public static String of(WindingSheet sheet, int planned) {
    List<String> lines = new ArrayList<>(List.of(sheet.check().plan().name() + ": winding sheet", "", WindingWords.whole(sheet).english()));
    WindingWords.otherThreads(sheet, planned).map(Phrase::english).ifPresent(lines::add);
    lines.add("");
    lines.add("In the order of the warp:");
    lines.addAll(WindingSteps.ofWarp(sheet).texts());
    if (!sheet.spare().isEmpty()) {
      lines.add("Beside it, for repairs:");
      lines.addAll(WindingSteps.ofSpare(sheet).texts());
    }
    sheet.feeds().forEach(feed -> feed(lines, sheet, feed));
    bouts(lines, sheet);
    return String.join(System.lineSeparator(), lines);
  }

  private static void feed(List<String> lines, WindingSheet sheet, Feed feed) {
    lines.add("");
    lines.add(feed.kind().yarn() + ": " + WindingWords.amount(feed));
    WindingWords.hindrance(sheet, feed).ifPresent(why -> lines.add("  " + why));
    WindingWords.skeins(feed).forEach(line -> lines.add("  " + line));
  }

  private static void bouts(List<String> lines, WindingSheet sheet) {
    lines.add("");
    lines.add(WindingWords.bouts(sheet).english());
    TextTable table = new TextTable("bout", ">passes", ">ends", "counting groups");
    int number = 0;
    for (Bout bout : sheet.bouts()) {
      number++;
      table.row(
          Integer.toString(number), bout.firstPass() + "-" + bout.lastPass(), Integer.toString(bout.ends()),
          WindingWords.groups(sheet.counted(bout), sheet.wish().group()).english());
    }
    table.lines().forEach(line -> lines.add("  " + line));
  }
}
