package hankbook.exchange;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import hankbook.allot.Feed;
import hankbook.allot.WindingSheet;
import hankbook.plan.Bout;
import hankbook.plan.WoundRun;
import hankbook.plan.Step;
import hankbook.yarn.YarnColour;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;

/** Writes a winding sheet as one JSON object; metres to four places. */
public final class WindingFile {
  private WindingFile() {}

  /**
   * The sheet as text.
   *
   * @param due when each skein is expected that was counted though it has not come, by its code
   */
  public static String write(WindingSheet sheet, Map<String, LocalDate> due) {
    ObjectNode root = JsonText.object().put("plan", sheet.check().plan().name()).put("ends", sheet.ends()).put("passes", sheet.passes());
    root.put("warpLengthM", sheet.check().yardage().warp().total().metres()).put("lengthM", sheet.length().metres());
    int behind = steps(root.putArray("warp"), sheet.warp(), 1);
    steps(root.putArray("spare"), sheet.spare(), behind);
    ArrayNode feeds = root.putArray("feeds");
    sheet.feeds().forEach(feed -> feed(feeds.addObject(), sheet, feed));
    ArrayNode bouts = root.putArray("bouts");
    sheet.bouts().forEach(bout -> bout(bouts.addObject(), sheet, bout));
    AnswerFile.counted(root, due);
    return JsonText.of(root);
  }

  private static int steps(ArrayNode array, List<Step> steps, int first) {
    int pass = first;
    for (Step step : steps) {
      int behind = pass + step.passes().size();
      ObjectNode node = array.addObject().put("firstPass", pass).put("lastPass", behind - 1).put("ends", step.ends());
      ArrayNode held = node.putArray("held");
      for (WoundRun run : step.passes().get(0).held()) {
        yarn(held.addObject(), run.kind().yarn()).put("threads", run.ends());
      }
      node.put("heldLast", step.passes().getLast().ends());
      pass = behind;
    }
    return pass;
  }

  private static void feed(ObjectNode node, WindingSheet sheet, Feed feed) {
    yarn(node, feed.kind().yarn()).put("ends", feed.ends()).put("perEndM", feed.kind().perEnd().metres()).put("lengthM", feed.length().metres());
    node.put("passes", feed.passes()).put("threads", feed.threads()).put("fewerThanWished", sheet.fewerThanWished(feed)).put("withoutSkein", feed.unfed());
    ArrayNode stints = node.putArray("skeins");
    feed.stints().forEach(
        stint -> stints.addObject()
            .put("position", stint.position())
            .put("skein", stint.skein())
            .put("firstPass", stint.firstPass())
            .put("lastPass", stint.lastPass())
            .put("ends", stint.ends()));
  }

  private static void bout(ObjectNode node, WindingSheet sheet, Bout bout) {
    WindingSheet.Counted counted = sheet.counted(bout);
    node.put("firstPass", bout.firstPass()).put("lastPass", bout.lastPass()).put("ends", bout.ends()).put("groups", counted.groups()).put("over", counted.over());
  }

  private static ObjectNode yarn(ObjectNode node, YarnColour yarn) {
    return node.put("yarn", yarn.yarn()).put("colour", yarn.colour());
  }
}
