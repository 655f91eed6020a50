package hankbook.desktop;

import hankbook.desktop.say.Say;
import hankbook.studio.PlanQueue;
import hankbook.studio.QueuePlans;
import hankbook.studio.QueuedPlan;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * All plans against all yarns, as the screen shows them; made away from it.
 *
 * @param yarns across
 * @param rows the plans, in the order that is kept or tried
 * @param kept the plans' names in the order that is kept
 * @param changes what the order that is tried would change
 * @param counted how many skeins on order count as though they had come
 */
record Ahead(List<AheadYarn> yarns, List<AheadRow> rows, List<String> kept, List<PlanQueue.Change> changes, int counted) {
  /** However the plans are moved, each yarn stays where it is. */
  private static final Comparator<PlanQueue.YarnTotal> BY_YARN = Comparator.comparing(PlanQueue.YarnTotal::yarn);

  static final Ahead NOTHING = new Ahead(List.of(), List.of(), List.of(), List.of(), 0);

  static Ahead of(PlanQueue queue, YarnPalette palette) {
    return of(new QueuePlans.Compared(queue, queue), palette);
  }

  static Ahead of(QueuePlans.Compared compared, YarnPalette palette) {
    List<PlanQueue.Change> changes = compared.changes();
    List<AheadRow> rows = new ArrayList<>();
    compared.after().plans().forEach(plan -> rows.add(AheadRow.of(rows.size() + 1, plan, changes)));
    List<AheadYarn> yarns = compared.after().totals().stream().sorted(BY_YARN).map(total -> AheadYarn.of(total, palette.looks().getOrDefault(total.yarn(), ""))).toList();
    List<String> kept = compared.before().plans().stream().map(QueuedPlan::name).toList();
    return new Ahead(yarns, List.copyOf(rows), kept, changes, compared.after().counted().size());
  }

  /** The plans' names in the order shown. */
  List<String> names() {
    return rows.stream().map(AheadRow::name).toList();
  }

  /** How many plans there are and how many yarns lack. */
  String summary() {
    long lacking = yarns.stream().filter(yarn -> !yarn.lack().isEmpty()).count();
    String lacks = lacking == 0 ? Say.text("nothing lacks") : Say.count(lacking, "{0} yarn lacks", "{0} yarns lack");
    String coming = counted == 0 ? "" : Say.count(counted, "{0} skein on order counted", "{0} skeins on order counted");
    String plans = Say.count(rows.size(), "{0} plan", "{0} plans");
    return rows.isEmpty() ? "" : Stream.of(plans, lacks, coming).filter(words -> !words.isEmpty()).collect(Collectors.joining(", "));
  }
}
