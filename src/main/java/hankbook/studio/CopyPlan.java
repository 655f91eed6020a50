package hankbook.studio;

import hankbook.exchange.BadInput;
import hankbook.exchange.PlanDraft;
import hankbook.exchange.PlanField;
import hankbook.exchange.PlanFile;
import hankbook.exchange.PlanPart;
import hankbook.exchange.RemedyDraft;
import hankbook.measure.Length;
import hankbook.plan.Plan;
import hankbook.plan.PlanName;
import hankbook.plan.Variation;
import hankbook.store.Session;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;

/** Makes a plan of another: everything it says stands in the new one, and nothing is reserved for that. Putting the new one away undoes it. */
public final class CopyPlan {
  private final Studio studio;

  public CopyPlan(Studio studio) {
    this.studio = studio;
  }

  /**
   * Makes a plan that says the same, finished or not.
   *
   * @param as its name; a free one like the old one's where none is given
   * @return its name
   * @throws NotDone if there is no such plan, or the name is taken
   */
  public String duplicate(String plan, Optional<String> as) throws NotDone {
    return studio.write(session -> {
      PlanDraft draft = PlanDraft.of(text(session, plan));
      return kept(session, draft, plan, as);
    });
  }

  /**
   * Makes a plan of a variant.
   *
   * @param as its name; a free one like that of the plan it varies where none is given
   * @return its name
   * @throws BadInput if the plan cannot be varied so
   * @throws NotDone if there is no such plan, or the name is taken
   */
  public String vary(String plan, Variation variation, Optional<String> as) throws BadInput, NotDone {
    return studio.<String, BadInput>write(session -> {
      String text = text(session, plan);
      Plan asked = PlanFile.read(plan, text);
      Plan varied = Answer.reckoned(plan, () -> variation.of(asked));
      return kept(session, RemedyDraft.apply(PlanDraft.of(text), asked, varied), plan, as);
    });
  }

  private static String text(Session session, String plan) throws NotDone {
    return Plans.text(session, plan).orElseThrow(() -> NotDone.because("There is no plan {0} in the ledger; plan list shows those there are.", plan));
  }

  private String kept(Session session, PlanDraft draft, String of, Optional<String> as) throws NotDone {
    Set<String> listed = Plans.texts(session).keySet();
    Predicate<String> taken = name -> listed.stream().anyMatch(other -> PlanName.alike(name, other)) || hasYarn(session, name);
    String name = as.isPresent() ? Plans.named(as.get()) : PlanName.another(of, taken);
    if (listed.contains(name)) {
      throw NotDone.because("There is a plan {0} already; choose another name.", name);
    }
    if (hasYarn(session, name)) {
      throw NotDone.because("The journal has yarn under {0} from a plan that was put away; choose another name.", name);
    }
    new Plans(studio).keep(session, name, draft.with(PlanField.of(PlanPart.PLAN, "name"), name).json());
    return name;
  }

  private static boolean hasYarn(Session session, String name) {
    return session.balances().ofPlan(name).lengths().values().stream().anyMatch(Length::isPositive);
  }
}
