package hankbook.cli;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import hankbook.exchange.JsonText;
import hankbook.reckon.SkeinUse;
import hankbook.reckon.YarnUsed;
import hankbook.studio.Finish;
import hankbook.studio.Finishing;
import hankbook.studio.UsedAgainstPlan;

/** How the book of a plan is squared, as one JSON object; metres to four places. */
final class FinishJson {
  private FinishJson() {}

  static String preview(Finishing finishing) {
    ObjectNode root = JsonText.object();
    finishing(root, finishing);
    return JsonText.of(root);
  }

  static String finished(Finish.Finished finished) {
    ObjectNode root = LedgerJson.node(finished.entered());
    finished.finishing().ifPresent(finishing -> finishing(root, finishing));
    return JsonText.of(root);
  }

  private static void finishing(ObjectNode root, Finishing finishing) {
    root.put("plan", finishing.plan()).put("planVersion", finishing.planVersion()).put("date", finishing.date().toString());
    root.put("reason", finishing.made().actuals().reason());
    ArrayNode movements = root.putArray("movements");
    finishing.squared().movements().forEach((kind, transfers) -> transfers.forEach(transfer -> movements.addObject()
        .put("kind", kind.name())
        .put("skein", transfer.skein())
        .put("from", transfer.from().text())
        .put("to", transfer.to().text())
        .put("lengthM", transfer.length().metres())));
    ArrayNode skeins = root.putArray("skeins");
    finishing.squared().skeins().forEach(use -> skein(skeins.addObject(), use));
    ArrayNode yarns = root.putArray("yarns");
    for (int i = 0; i < finishing.yarns().size(); i++) {
      yarn(yarns.addObject(), finishing.yarns().get(i), finishing.made().used().get(i));
    }
  }

  private static void skein(ObjectNode node, SkeinUse use) {
    node.put("skein", use.skein().code()).put("yarn", use.skein().yarn().yarn()).put("colour", use.skein().yarn().colour());
    node.put("drawnM", use.skein().onLoom().metres()).put("drawnMoreM", use.drawnMore().metres()).put("returnedM", use.returned().metres());
    node.put("recountedM", use.recounted().metres()).put("releasedM", use.skein().reserved().metres()).put("usedM", use.used().metres());
    node.put("samplesM", use.sampled().metres()).put("thrumsM", use.thrums().metres()).put("wovenM", use.woven().metres());
  }

  private static void yarn(ObjectNode node, UsedAgainstPlan yarn, YarnUsed used) {
    node.put("yarn", yarn.yarn().yarn()).put("colour", yarn.yarn().colour()).put("plannedM", yarn.planned().metres()).put("usedM", yarn.used().metres());
    node.put("samplesM", used.sampled().metres()).put("thrumsM", used.thrums().metres()).put("uncertaintyM", used.uncertainty().metres());
    node.put("unexplainedM", yarn.unexplained().metres()).put("mayStayM", yarn.mayStay().metres()).put("wantsReason", yarn.wantsReason());
  }
}
