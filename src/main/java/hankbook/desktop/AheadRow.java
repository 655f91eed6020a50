package hankbook.desktop;

import hankbook.desktop.say.Say;
import hankbook.studio.PlanQueue;
import hankbook.studio.QueuedPlan;
import hankbook.yarn.YarnColour;
import java.util.Collection;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * A plan at its turn, as the table shows it; every text is made once.
 *
 * @param turn from 1
 * @param name the plan's
 * @param standing as the worst of its yarns; empty where it takes no more yarn
 * @param words what has become of it, where it takes no more yarn
 * @param cells what it asks of each yarn
 */
record AheadRow(int turn, String name, Optional<Standing> standing, String words, Map<YarnColour, AheadCell> cells) {
  static AheadRow of(int turn, QueuedPlan plan, Collection<PlanQueue.Change> changes) {
    List<YarnColour> changed = changes.stream().filter(change -> change.plan().equals(plan.name())).map(change -> change.after().yarn()).toList();
    Map<YarnColour, AheadCell> cells = new LinkedHashMap<>();
    plan.claims().forEach(claim -> cells.put(claim.yarn(), AheadCell.of(claim, changed.contains(claim.yarn()))));
    return new AheadRow(turn, plan.name(), standing(plan, cells), Say.known(plan.stands().words()), cells);
  }

  private static Optional<Standing> standing(QueuedPlan plan, Map<YarnColour, AheadCell> cells) {
    return switch (plan.stands()) {
      case OPEN -> cells.values().stream().map(AheadCell::standing).max(Comparator.naturalOrder()).or(() -> Optional.of(Standing.COVERED));
      case UNFINISHED -> Optional.of(Standing.UNFINISHED);
      case ON_THE_LOOM, WOVEN -> Optional.empty();
    };
  }

  /** How the plan stands, in a word or two. */
  String state() {
    return standing.map(Standing::word).orElse(words);
  }

  /** Whether the order that is tried would change anything for it. */
  boolean isChanged() {
    return cells.values().stream().anyMatch(AheadCell::changed);
  }
}
