package hankbook.cli;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import hankbook.exchange.JsonText;
import hankbook.studio.PlanQueue;
import hankbook.studio.QueuedPlan;
import hankbook.yarn.YarnColour;
import java.util.List;
import java.util.Optional;

/** All plans in the order in which they take their yarn, as one JSON object; metres to four places. */
final class QueueJson {
  private QueueJson() {}

  static String of(PlanQueue queue, Optional<List<PlanQueue.Change>> changes, boolean kept) {
    ObjectNode root = JsonText.object();
    ArrayNode plans = root.putArray("plans");
    queue.plans().forEach(plan -> plan(plans.addObject(), plan));
    ArrayNode totals = root.putArray("yarns");
    queue.totals().forEach(total -> yarn(totals.addObject(), total.yarn())
        .put("needM", total.need().metres())
        .put("freeM", total.free().metres())
        .put("lackM", total.lack().metres()));
    ArrayNode counted = root.putArray("counted");
    queue.counted().forEach(coming -> ExpectedJson.skein(counted, coming));
    changes.ifPresent(found -> changes(root.put("kept", kept).putArray("changes"), found));
    return JsonText.of(root);
  }

  private static void plan(ObjectNode node, QueuedPlan plan) {
    node.put("plan", plan.name()).put("stands", plan.stands().words());
    if (!plan.unfinished().isEmpty()) {
      node.put("unfinished", plan.unfinished());
    }
    ArrayNode yarns = node.putArray("yarns");
    plan.claims().forEach(claim -> yarn(yarns.addObject(), claim.yarn())
        .put("needM", claim.need().metres())
        .put("freeM", claim.free().metres())
        .put("lackM", claim.lack().metres())
        .put("verdict", claim.verdict().name()));
    ArrayNode skeins = node.putArray("skeins");
    plan.skeins().forEach(given -> skeins.addObject().put("skein", given.skein()).put("lengthM", given.length().metres()));
  }

  private static void changes(ArrayNode array, List<PlanQueue.Change> changes) {
    for (PlanQueue.Change change : changes) {
      yarn(array.addObject().put("plan", change.plan()), change.before().yarn())
          .put("lackBeforeM", change.before().lack().metres())
          .put("lackAfterM", change.after().lack().metres())
          .put("verdictBefore", change.before().verdict().name())
          .put("verdictAfter", change.after().verdict().name());
    }
  }

  private static ObjectNode yarn(ObjectNode node, YarnColour yarn) {
    return node.put("yarn", yarn.yarn()).put("colour", yarn.colour());
  }
}
