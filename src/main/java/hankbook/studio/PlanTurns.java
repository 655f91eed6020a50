package hankbook.studio;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/** In which order the plans of a ledger take their yarn. */
final class PlanTurns {
  private PlanTurns() {}

  /**
   * Those of the order last kept, then the others by name.
   *
   * @param listed the plans on the list, by name
   * @param kept the order last kept, in which some may be that are on the list no more
   */
  static List<String> of(Set<String> listed, List<String> kept) {
    Set<String> turns = new LinkedHashSet<>(kept);
    turns.retainAll(listed);
    turns.addAll(listed);
    return List.copyOf(turns);
  }

  /**
   * The order after a plan is moved.
   *
   * @throws NotDone if it or the other is not among them, or both are the same
   */
  static List<String> moved(List<String> turns, PlanMove move) throws NotDone {
    for (String name : List.of(move.plan(), move.beside())) {
      if (!turns.contains(name)) {
        throw NotDone.because("There is no plan {0} in the ledger; the order of the plans is as it was.", name);
      }
    }
    if (move.plan().equals(move.beside())) {
      throw NotDone.because("{0} cannot be moved beside itself; the order of the plans is as it was.", move.plan());
    }
    List<String> moved = new ArrayList<>(turns);
    moved.remove(move.plan());
    moved.add(moved.indexOf(move.beside()) + (move.before() ? 0 : 1), move.plan());
    return List.copyOf(moved);
  }
}
