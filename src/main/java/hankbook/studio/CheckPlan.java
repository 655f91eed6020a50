package hankbook.studio;

import hankbook.exchange.BadInput;
import hankbook.exchange.PlanFile;
import hankbook.plan.Plan;
import hankbook.store.Session;
import java.util.Optional;

/** Holds a plan against the ledger: against what is free, and what the plan itself has reserved or on its loom. */
public final class CheckPlan {
  private final Studio studio;

  public CheckPlan(Studio studio) {
    this.studio = studio;
  }

  /**
   * Checks a plan that need not be kept.
   *
   * @throws BadInput where it does not add up
   */
  public Answer of(Plan plan) throws BadInput {
    return Answer.of(plan.name(), plan, studio.read(session -> Means.of(studio, session, plan.name())));
  }

  /**
   * Checks a plan of the ledger.
   *
   * @throws BadInput if there is none of that name, it is not finished, or it does not add up
   */
  public Answer named(String name) throws BadInput {
    return named(name, ExpectedBy.NOTHING);
  }

  /**
   * Checks a plan of the ledger as though some of the yarn on order had come.
   *
   * @throws BadInput if there is none of that name, it is not finished, or it does not add up
   */
  public Answer named(String name, ExpectedBy by) throws BadInput {
    record Found(Optional<String> text, Means means) {}
    Found found = studio.read(session -> new Found(Plans.text(session, name), Means.of(studio, session, name, by)));
    return Answer.of(name, plan(name, found.text()), found.means());
  }

  /**
   * A plan of the ledger as it was last kept.
   *
   * @throws BadInput if there is none of that name, or it is not finished
   */
  public Plan plan(String name) throws BadInput {
    return plan(name, studio.read(session -> Plans.text(session, name)));
  }

  static Answer named(Studio studio, String name, Session session) throws BadInput {
    return Answer.of(name, plan(name, Plans.text(session, name)), Means.of(studio, session, name));
  }

  /** What is said where the ledger has no plan of a name. */
  public static BadInput noSuchPlan(String name) {
    return new BadInput(name + ": found no plan of this name in the ledger, wanted one that plan list shows");
  }

  static Plan plan(String name, Optional<String> text) throws BadInput {
    if (text.isEmpty()) {
      throw noSuchPlan(name);
    }
    return PlanFile.read(name, text.get());
  }
}
