package hankbook.cli;

import hankbook.exchange.TextTable;
import hankbook.exchange.WeaveDraft;
import hankbook.exchange.WeaveShafts;
import hankbook.exchange.WeaveThreads;
import hankbook.plan.Succession;
import hankbook.studio.DraftColour;
import hankbook.studio.DraftPreview;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** A draft as a page to read. */
final class WeaveDraftReport {
  private static final int LONGEST_ORDER = 600;

  private WeaveDraftReport() {}

  static String of(String file, DraftPreview preview, boolean emptyShelf) {
    WeaveDraft draft = preview.draft();
    List<String> lines = new ArrayList<>();
    lines.add(draft.title().isEmpty() ? file : draft.title());
    lines.add("");
    lines.add("Warp: " + draft.warp().count() + " ends" + sett(draft.warp()));
    lines.add("  " + order(preview.warpOrder()));
    if (draft.weft().count() > 0) {
      lines.add("Weft: " + draft.weft().count() + " picks to the repeat" + sett(draft.weft()));
      lines.add("  " + order(preview.weftOrder()));
    }
    lines.addAll(loom(draft.shafts()));
    lines.add("");
    lines.addAll(colours(preview.colours()));
    lines.add("");
    lines.addAll(draft.notes());
    if (emptyShelf) {
      lines.add("There is no yarn on the shelf to propose; --stock STOCK.csv or --ledger names another.");
    }
    lines.add("To begin a plan of it, add --plan NAME and a --match 'A=YARN, COLOUR' for each colour, or --nearest for the rest.");
    return page(lines);
  }

  private static String sett(WeaveThreads threads) {
    return threads.sett().map(sett -> ", " + sett + " as the draft spaces them").orElse("");
  }

  private static String order(Optional<Succession> order) {
    String words = order.map(Succession::words).orElse("in an order too long to be written out");
    return words.length() > LONGEST_ORDER ? words.substring(0, LONGEST_ORDER) + "…" : words;
  }

  private static List<String> loom(WeaveShafts shafts) {
    List<String> lines = new ArrayList<>();
    if (shafts.shafts() > 0) {
      String below = shafts.liftPlan() || shafts.treadles() == 0 ? "" : ", " + count(shafts.treadles(), "treadle", "treadles");
      lines.add("Loom: " + count(shafts.shafts(), "shaft", "shafts") + below + (shafts.liftPlan() ? ", by a lift plan" : "") + (shafts.risingShed() ? "" : ", sinking shed"));
    }
    if (!shafts.heddles().isEmpty()) {
      lines.add("  heddles: " + String.join(", ", shafts.heddles().entrySet().stream().map(shaft -> shaft.getValue() + " on " + shaft.getKey()).toList()));
    }
    return lines;
  }

  private static List<String> colours(List<DraftColour> colours) {
    TextTable table = new TextTable("", "colour", ">ends", ">picks", "nearest on the shelf");
    colours.forEach(colour -> table.row(colour.mark(), colour.colour().toString(), some(colour.ends()), some(colour.picks()), nearest(colour)));
    List<String> lines = new ArrayList<>(table.lines());
    if (colours.stream().anyMatch(colour -> !colour.nearest().isEmpty())) {
      lines.add("");
      lines.add("In brackets, how far off a yarn's colour looks (CIEDE2000): 1 can just be told apart, black lies 100 from white.");
    }
    return lines;
  }

  private static String nearest(DraftColour colour) {
    return String.join(", ", colour.nearest().stream().limit(WeaveDraftJson.NEAREST).map(near -> near.yarn() + " (" + near.difference() + ")").toList());
  }

  private static String some(int count) {
    return count == 0 ? "" : Integer.toString(count);
  }

  static String count(int count, String one, String more) {
    return count + " " + (count == 1 ? one : more);
  }

  private static String page(List<String> lines) {
    return String.join(System.lineSeparator(), lines);
  }
}
