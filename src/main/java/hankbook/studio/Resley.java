package hankbook.studio;

import hankbook.exchange.BadInput;
import hankbook.exchange.PlanDraft;
import hankbook.exchange.PlanField;
import hankbook.exchange.PlanFile;
import hankbook.exchange.PlanPart;
import hankbook.measure.Sett;
import hankbook.plan.Plan;
import hankbook.plan.SettChange;
import hankbook.store.Session;

/** Sleys a beamed warp again to another sett: the ends stay, and the width moves. */
public final class Resley {
  private final Studio studio;

  public Resley(Studio studio) {
    this.studio = studio;
  }

  /**
   * What another sett would do to a plan of the ledger.
   *
   * @throws BadInput if there is none of that name, or it does not add up
   */
  public SettChange tried(String plan, Sett sett) throws BadInput {
    String text = studio.read(session -> Plans.text(session, plan)).orElseThrow(() -> CheckPlan.noSuchPlan(plan));
    return of(plan, PlanFile.read(plan, text), sett);
  }

  /**
   * Keeps a plan with another sett, and with its ends given outright from now on. What it said before stays in the ledger as an earlier version.
   *
   * @throws BadInput if there is none of that name, or it does not add up
   */
  public SettChange keep(String plan, Sett sett) throws BadInput, NotDone {
    return studio.write(session -> keep(session, plan, sett));
  }

  private SettChange keep(Session session, String name, Sett sett) throws BadInput {
    String text = Plans.text(session, name).orElseThrow(() -> CheckPlan.noSuchPlan(name));
    Plan plan = PlanFile.read(name, text);
    SettChange change = of(name, plan, sett);
    PlanDraft resleyed = entered(PlanDraft.of(text), plan, change);
    PlanFile.read(name, resleyed.json());
    new Plans(studio).keep(session, name, resleyed.json());
    return change;
  }

  /**
   * What would be entered into a draft for a change of sett: the new sett, and the ends outright where the plan does not say them.
   *
   * @param plan what the draft reads as
   */
  public static PlanDraft entered(PlanDraft draft, Plan plan, SettChange change) {
    PlanDraft resleyed = draft.with(PlanField.of(PlanPart.WARP, "sett"), change.after().sett().toString());
    return plan.warp().ends().isPresent() ? resleyed : resleyed.with(PlanField.of(PlanPart.WARP, "ends"), Integer.toString(change.ends()));
  }

  /**
   * What another sett would do to a plan that need not be kept.
   *
   * @throws BadInput if it does not add up
   */
  public static SettChange tried(Plan plan, Sett sett) throws BadInput {
    return of(plan.name(), plan, sett);
  }

  private static SettChange of(String name, Plan plan, Sett sett) throws BadInput {
    return Answer.reckoned(name, () -> SettChange.of(plan, sett));
  }
}
