package hankbook.desktop;

import hankbook.desktop.say.Say;
import hankbook.exchange.BadInput;
import hankbook.measure.Unreadable;
import hankbook.reckon.Made;
import hankbook.reckon.Reckoning;
import hankbook.studio.FinishedPlan;
import hankbook.studio.FinishedPlans;
import hankbook.studio.Shelf;
import hankbook.studio.Studio;
import java.util.Optional;

/**
 * What came of a plan whose book is squared.
 *
 * @param plan the plan, and what was found
 * @param reserved where the yarn went, against the plan as its yarn was taken for it
 * @param edited the same against the plan as it was last edited; empty where it was not edited since, or does not add up
 * @param palette of the yarns
 */
record SquaredSeen(FinishedPlan plan, Reckoning reserved, Optional<Reckoning> edited, YarnPalette palette) {
  /** What is in the ledger of a plan; empty where its book is not squared. */
  static Optional<SquaredSeen> of(Studio studio, String name) throws BadInput {
    Optional<FinishedPlan> finished = new FinishedPlans(studio).named(name);
    if (finished.isEmpty()) {
      return Optional.empty();
    }
    FinishedPlan plan = finished.get();
    Optional<Made> changed = plan.asEdited().filter(edited -> !edited.plan().equals(plan.asReserved().plan()));
    try {
      return Optional.of(new SquaredSeen(plan, Reckoning.of(plan.asReserved()), changed.flatMap(SquaredSeen::reckoned), YarnPalette.of(new Shelf(studio).everySkein())));
    } catch (Unreadable | ArithmeticException broken) {
      throw new BadInput(name + ": " + broken.getMessage());
    }
  }

  private static Optional<Reckoning> reckoned(Made made) {
    try {
      return Optional.of(Reckoning.of(made));
    } catch (Unreadable | ArithmeticException unfinished) {
      return Optional.empty();
    }
  }

  /** Why there is nothing to hold it against but the plan as its yarn was taken for it, or empty. */
  String whyNotEdited() {
    boolean same = plan.asEdited().filter(edited -> edited.plan().equals(plan.asReserved().plan())).isPresent();
    return edited.isPresent() ? "" : same ? Say.text("The plan was not edited since.") : Say.text("The plan does not add up as it was last edited.");
  }
}
