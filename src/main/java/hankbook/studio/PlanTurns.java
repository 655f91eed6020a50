package hankbook.studio;

import hankbook.store.Session;
import java.util.ArrayList;
import java.util.List;

/** In which order the plans of a ledger take their yarn. */
final class PlanTurns {
  private PlanTurns() {}

  /** The plans on the list: those of the order last kept, then the others by name. */
  static List<String> of(Session session) {
    List<String> listed = session.plans().names().stream().filter(name -> Plans.text(session, name).isPresent()).toList();
    List<String> turns = new ArrayList<>(session.turns().newest().stream().filter(listed::contains).toList());
    listed.stream().filter(name -> !turns.contains(name)).forEach(turns::add);
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
        throw NotDone.because("There is no plan " + name + " in the ledger; the order of the plans is as it was.");
      }
    }
    if (move.plan().equals(move.beside())) {
      throw NotDone.because(move.plan() + " cannot be moved beside itself; the order of the plans is as it was.");
    }
    List<String> moved = new ArrayList<>(turns);
    moved.remove(move.plan());
    moved.add(moved.indexOf(move.beside()) + (move.before() ? 0 : 1), move.plan());
    return List.copyOf(moved);
  }
}
