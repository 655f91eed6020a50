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
    lines.add(warp(warp, order(preview.warpOrder())));
    lines.add(weft.count() == 0 ? Say.text("No weft.") : weft(weft, order(preview.weftOrder())));
    Optional.of(loom(preview.draft().shafts())).filter(words -> !words.isEmpty()).ifPresent(lines::add);
    lines.addAll(preview.draft().notes());
    return lines;
  }

  /** So many ends or picks. */
  static String threads(DraftChoice choice) {
    return choice.use().role() == Role.WARP ? Say.count(choice.threads(), "warp, {0} end", "warp, {0} ends") : Say.count(choice.threads(), "weft, {0} pick", "weft, {0} picks");
  }

  private static String warp(WeaveThreads warp, String order) {
    return warp.sett()
        .map(sett -> Say.count(warp.count(), "{0} end, {1} as the draft spaces them: {2}", "{0} ends, {1} as the draft spaces them: {2}", Wording.sett(sett), order))
        .orElseGet(() -> Say.count(warp.count(), "{0} end: {1}", "{0} ends: {1}", order));
  }

  private static String weft(WeaveThreads weft, String order) {
    return weft.sett()
        .map(sett -> Say.count(
            weft.count(), "{0} pick to the repeat, {1} as the draft spaces them: {2}", "{0} picks to the repeat, {1} as the draft spaces them: {2}", Wording.sett(sett), order))
        .orElseGet(() -> Say.count(weft.count(), "{0} pick to the repeat: {1}", "{0} picks to the repeat: {1}", order));
  }

  private static String order(Optional<Succession> order) {
    String words = order.map(Succession::words).orElse(Say.text("in an order too long to be written out"));
    return words.length() > LONGEST_ORDER ? words.substring(0, LONGEST_ORDER) + "…" : words + ".";
  }

  private static String loom(WeaveShafts shafts) {
    if (shafts.shafts() == 0) {
      return "";
    }
    String numbers = shafts.liftPlan() || shafts.treadles() == 0
        ? Say.count(shafts.shafts(), "{0} shaft", "{0} shafts")
        : Say.count(shafts.shafts(), "{0} shaft, {1}", "{0} shafts, {1}", Say.count(shafts.treadles(), "{0} treadle", "{0} treadles"));
    if (shafts.liftPlan()) {
      return shafts.risingShed() ? Say.text("{0}, by a lift plan.", numbers) : Say.text("{0}, by a lift plan, sinking shed.", numbers);
    }
    return shafts.risingShed() ? numbers + "." : Say.text("{0}, sinking shed.", numbers);
  }
}
