package hankbook.cli;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import hankbook.exchange.JsonText;
import hankbook.exchange.PlanDraft;
import hankbook.exchange.PlanField;
import hankbook.exchange.PlanPart;
import hankbook.exchange.WeavePlan;
import hankbook.exchange.WeaveShafts;
import hankbook.exchange.WeaveThreads;
import hankbook.plan.Succession;
import hankbook.studio.DraftColour;
import hankbook.studio.DraftPreview;
import hankbook.yarn.NearestYarn;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.nio.file.Path;
import java.util.Optional;

/** A draft, and the plan that it began, as one JSON object each. */
final class WeaveDraftJson {
  /** How many of the nearest yarns are named. */
  static final int NEAREST = 3;

  private WeaveDraftJson() {}

  static String of(DraftPreview preview) {
    ObjectNode root = JsonText.object().put("title", preview.draft().title());
    threads(root.putObject("warp").put("ends", preview.draft().warp().count()), preview.draft().warp(), preview.warpOrder());
    threads(root.putObject("weft").put("picks", preview.draft().weft().count()), preview.draft().weft(), preview.weftOrder());
    WeaveShafts shafts = preview.draft().shafts();
    ObjectNode loom = root.putObject("loom").put("shafts", shafts.shafts()).put("treadles", shafts.treadles());
    loom.put("risingShed", shafts.risingShed()).put("liftPlan", shafts.liftPlan());
    ArrayNode heddles = loom.putArray("heddles");
    shafts.heddles().forEach((shaft, ends) -> heddles.addObject().put("shaft", shaft).put("ends", ends));
    ArrayNode colours = root.putArray("colours");
    preview.colours().forEach(colour -> colour(colours.addObject(), colour));
    ArrayNode notes = root.putArray("notes");
    preview.draft().notes().forEach(notes::add);
    return JsonText.of(root);
  }

  static String begun(PlanDraft plan, Optional<Path> written) {
    ObjectNode root = JsonText.object().put("plan", plan.text(PlanField.of(PlanPart.PLAN, "name")));
    written.ifPresentOrElse(file -> root.put("file", file.toString()), () -> root.putNull("file"));
    ArrayNode wanting = root.putArray("wanting");
    WeavePlan.wanting(plan).forEach(wanting::add);
    return JsonText.of(root);
  }

  private static void threads(ObjectNode node, WeaveThreads threads, Optional<Succession> order) {
    threads.sett().ifPresentOrElse(sett -> node.put("sett", sett.toString()), () -> node.putNull("sett"));
    order.ifPresentOrElse(written -> node.put("order", written.toString()), () -> node.putNull("order"));
  }

  private static void colour(ObjectNode node, DraftColour colour) {
    node.put("mark", colour.mark());
    if (colour.colour().hex().isEmpty()) {
      node.putNull("hex");
    } else {
      node.put("hex", colour.colour().hex());
    }
    node.put("ends", colour.ends()).put("picks", colour.picks());
    ArrayNode nearest = node.putArray("nearest");
    for (NearestYarn near : colour.nearest().stream().limit(NEAREST).toList()) {
      nearest.addObject()
          .put("yarn", near.yarn().yarn())
          .put("colour", near.yarn().colour())
          .put("hex", near.hex())
          .put("difference", BigDecimal.valueOf(near.difference().deltaE()).setScale(2, RoundingMode.HALF_UP))
          .put("heldM", near.holds().metres());
    }
  }
}
