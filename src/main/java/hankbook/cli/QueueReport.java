package hankbook.cli;

import hankbook.exchange.TextTable;
import hankbook.measure.Length;
import hankbook.measure.LengthUnit;
import hankbook.studio.PlanQueue;
import hankbook.studio.QueuedPlan;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** All plans in the order in which they take their yarn, as a page to read. */
final class QueueReport {
  private QueueReport() {}

  static String of(PlanQueue queue, Optional<List<PlanQueue.Change>> changes, boolean kept) {
    if (queue.plans().isEmpty()) {
      return "No plan yet; plan add takes one from a file.";
    }
    List<String> lines = new ArrayList<>(plans(queue));
    if (!queue.totals().isEmpty()) {
      lines.add("");
      lines.addAll(totals(queue));
      lines.add("");
      lines.add("Each plan takes its yarn from what those before it leave; what it lacks is counted in whole ends.");
    }
    queue.plans().stream().filter(plan -> !plan.unfinished().isEmpty()).forEach(plan -> lines.add(plan.unfinished()));
    lines.addAll(ExpectedReport.counted(queue.counted()));
    changes.ifPresent(found -> lines.addAll(changes(found, kept)));
    return String.join(System.lineSeparator(), lines);
  }

  private static List<String> plans(PlanQueue queue) {
    TextTable table = new TextTable(">turn", "plan", "yarn", ">need", ">free then", ">lacks", "verdict");
    int turn = 0;
    for (QueuedPlan plan : queue.plans()) {
      turn++;
      if (plan.claims().isEmpty()) {
        table.row(Integer.toString(turn), plan.name(), "", "", "", "", plan.stands() == QueuedPlan.Stands.OPEN ? "" : plan.stands().words());
      }
      for (int i = 0; i < plan.claims().size(); i++) {
        QueuedPlan.Claim claim = plan.claims().get(i);
        table.row(
            i == 0 ? Integer.toString(turn) : "", i == 0 ? plan.name() : "", claim.yarn().toString(), metres(claim.need()), metres(claim.free()), lack(claim.lack()),
            claim.verdict().name());
      }
    }
    return table.lines();
  }

  private static List<String> totals(PlanQueue queue) {
    TextTable table = new TextTable("all plans", ">need", ">free", ">lacks");
    queue.totals().forEach(total -> table.row(total.yarn().toString(), metres(total.need()), metres(total.free()), lack(total.lack())));
    return table.lines();
  }

  private static List<String> changes(List<PlanQueue.Change> changes, boolean kept) {
    List<String> lines = new ArrayList<>(List.of(""));
    lines.add(kept ? "The order of the plans was kept. What it changes:" : "The order of the plans was only tried, and is as it was. What it would change:");
    changes.forEach(change -> lines.add("  " + change.plan() + ", " + change.before().yarn() + ": " + state(change.before()) + " becomes " + state(change.after())));
    if (changes.isEmpty()) {
      lines.add("  nothing: every plan lacks what it lacked");
    }
    return lines;
  }

  private static String state(QueuedPlan.Claim claim) {
    return claim.verdict() + (claim.lack().isZero() ? "" : ", lacking " + metres(claim.lack()));
  }

  private static String lack(Length length) {
    return length.isZero() ? "" : metres(length);
  }

  private static String metres(Length length) {
    return length.print(LengthUnit.METRE, 1);
  }
}
