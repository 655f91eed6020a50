package hankbook.studio;

import hankbook.exchange.BadInput;
import hankbook.plan.Plan;
import hankbook.reckon.Finding;
import hankbook.reckon.Findings;
import hankbook.reckon.Learnable;
import hankbook.reckon.Manner;
import hankbook.reckon.Offer;
import hankbook.yarn.OneLine;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** What the finished plans of the ledger taught. It is offered to plans to come and put into none by itself. */
public final class Learnt {
  private final Studio studio;

  public Learnt(Studio studio) {
    this.studio = studio;
  }

  /** All of it. */
  public Findings all() {
    return studio.read(session -> studio.learnt().findings(session));
  }

  /**
   * What is proposed for a plan of the ledger.
   *
   * @param plan the answer to it as it is, with all that was learnt
   * @param manner how its cloth is to be made, as far as it is said
   * @param offers one for each thing that can be told
   */
  public record Proposal(Answer plan, Manner manner, List<Offer> offers) {
    public Proposal {
      offers = List.copyOf(offers);
    }
  }

  /**
   * What is proposed for a plan of the ledger.
   *
   * @param said how its cloth is to be made, where that is other or more than what the plan says
   * @throws BadInput if there is none of that name, it is not finished, or it does not add up
   */
  public Proposal forPlan(String name, Manner said) throws BadInput {
    Answer answer = new CheckPlan(studio).named(OneLine.of(name));
    Manner manner = said.and(answer.manner());
    return new Proposal(answer, manner, answer.learnt().offers(manner));
  }

  /**
   * What is proposed for a plan that need not be kept, as far as it is known what its yarns are spun of.
   *
   * @throws BadInput where it does not add up
   */
  public List<Offer> offers(Plan plan) throws BadInput {
    Means means = studio.read(session -> Means.of(studio, session, plan.name()));
    return means.learnt().equals(Findings.NONE) ? List.of() : Answer.reckoned(plan.name(), () -> means.learnt().offers(means.manner(plan)));
  }

  /** What a loom of that name was found to waste; empty where nothing was finished on it. */
  public static Optional<Finding> waste(Findings learnt, String loom) {
    return learnt.of(Learnable.LOOM_WASTE, new Manner(Optional.of(loom), Optional.empty(), Set.of()));
  }
}
