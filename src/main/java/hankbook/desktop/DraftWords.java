package hankbook.desktop;

import hankbook.desktop.say.Say;
import hankbook.exchange.WeaveShafts;
import hankbook.exchange.WeaveThreads;
import hankbook.plan.Need.Role;
import hankbook.plan.Succession;
import hankbook.studio.DraftPreview;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What is in a draft, in words. */
final class DraftWords {
  private static final int LONGEST_ORDER = 260;

  private DraftWords() {}

  /** Of the warp, the weft and the loom, and what the file left out, a sentence each. */
  static List<String> of(DraftPreview preview) {
    List<String> lines = new ArrayList<>();
    WeaveThreads warp = preview.draft().warp();
    WeaveThreads weft = preview.draft().weft();
    lines.add(Wording.count(warp.count(), "end", "ends") + sett(warp) + ": " + order(preview.warpOrder()));
    lines.add(weft.count() == 0 ? Say.text("No weft.") : Wording.count(weft.count(), "pick", "picks") + " to the repeat" + sett(weft) + ": " + order(preview.weftOrder()));
    Optional.of(loom(preview.draft().shafts())).filter(words -> !words.isEmpty()).ifPresent(lines::add);
    lines.addAll(preview.draft().notes());
    return lines;
  }

  /** So many ends or picks. */
  static String threads(DraftChoice choice) {
    return choice.use().role() == Role.WARP ? "warp, " + Wording.count(choice.threads(), "end", "ends") : "weft, " + Wording.count(choice.threads(), "pick", "picks");
  }

  private static String sett(WeaveThreads threads) {
    return threads.sett().map(sett -> ", " + sett + " as the draft spaces them").orElse("");
  }

  private static String order(Optional<Succession> order) {
    String words = order.map(Succession::words).orElse(Say.text("in an order too long to be written out"));
    return words.length() > LONGEST_ORDER ? words.substring(0, LONGEST_ORDER) + "…" : words + ".";
  }

  private static String loom(WeaveShafts shafts) {
    if (shafts.shafts() == 0) {
      return "";
    }
    boolean lifted = shafts.liftPlan() || shafts.treadles() == 0;
    String below = lifted ? "" : ", " + Wording.count(shafts.treadles(), "treadle", "treadles");
    return Wording.count(shafts.shafts(), "shaft", "shafts") + below + (shafts.liftPlan() ? Say.text(", by a lift plan") : "") + (shafts.risingShed() ? "." : Say.text(", sinking shed."));
  }
}
