package hankbook.studio;

import hankbook.allot.Verdict;
import hankbook.measure.Length;
import hankbook.yarn.YarnColour;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * All plans of a ledger in the order in which they take their yarn, each from what those before it left. A plan that is short takes what there is
 * of its yarns, as though the rest were bought for it.
 *
 * @param plans in their order
 * @param counted the yarn on order that counts as though it had come
 * @param free what is in the house for all open plans together, by yarn: on the shelf, and reserved or on a loom for one of them
 */
public record PlanQueue(List<QueuedPlan> plans, List<ExpectedSkein> counted, Map<YarnColour, Length> free) {
  public PlanQueue {
    plans = List.copyOf(plans);
    counted = List.copyOf(counted);
    free = Map.copyOf(free);
  }

  /**
   * One yarn over all plans.
   *
   * @param yarn the yarn
   * @param need of all open plans
   * @param free for them
   * @param lack of all of them
   */
  public record YarnTotal(YarnColour yarn, Length need, Length free, Length lack) {}

  /**
   * What another order of plans changes for one yarn of a plan.
   *
   * @param plan the plan
   * @param before what it asked
   * @param after what it asks in the other order
   */
  public record Change(String plan, QueuedPlan.Claim before, QueuedPlan.Claim after) {}

  /** Each yarn that an open plan asks for, in the order of the plans. */
  public List<YarnTotal> totals() {
    Map<YarnColour, YarnTotal> totals = new LinkedHashMap<>();
    for (QueuedPlan plan : plans) {
      for (QueuedPlan.Claim claim : plan.claims()) {
        YarnTotal one = new YarnTotal(claim.yarn(), claim.need(), free.getOrDefault(claim.yarn(), Length.ZERO), claim.lack());
        totals.merge(claim.yarn(), one, (all, more) -> new YarnTotal(all.yarn(), all.need().plus(more.need()), all.free(), all.lack().plus(more.lack())));
      }
    }
    return List.copyOf(totals.values());
  }

  /** Whether some plan is short of a yarn. */
  public boolean isShort() {
    return plans.stream().flatMap(plan -> plan.claims().stream()).anyMatch(claim -> claim.verdict() == Verdict.SHORT);
  }

  /** What changes for the better or the worse where the plans take their yarn in another order instead. */
  public List<Change> changesIn(PlanQueue other) {
    Map<String, Map<YarnColour, QueuedPlan.Claim>> others = new HashMap<>();
    other.plans.forEach(plan -> plan.claims().forEach(claim -> others.computeIfAbsent(plan.name(), none -> new HashMap<>()).put(claim.yarn(), claim)));
    List<Change> changes = new ArrayList<>();
    for (QueuedPlan plan : plans) {
      for (QueuedPlan.Claim claim : plan.claims()) {
        Optional.ofNullable(others.getOrDefault(plan.name(), Map.of()).get(claim.yarn()))
            .filter(after -> !after.lack().equals(claim.lack()) || after.verdict() != claim.verdict())
            .ifPresent(after -> changes.add(new Change(plan.name(), claim, after)));
      }
    }
    return changes;
  }
}
