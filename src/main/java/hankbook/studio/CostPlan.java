package hankbook.studio;

import hankbook.cost.CostWish;
import hankbook.exchange.BadInput;
import hankbook.plan.Plan;
import hankbook.store.Session;
import java.nio.file.Path;
import java.util.Optional;

/** Works out what a plan costs before it is begun, and afterwards what its yarn cost beside that. */
public final class CostPlan {
  private final Studio studio;

  public CostPlan(Studio studio) {
    this.studio = studio;
  }

  /**
   * Costs a plan that need not be kept.
   *
   * @throws BadInput where it does not add up
   */
  public CostedPlan of(Plan plan, CostWish wish) throws BadInput {
    Found found = studio.read(session -> Found.of(studio, session, plan.name(), ExpectedBy.NOTHING));
    return CostedPlan.of(plan.name(), Answer.of(plan.name(), plan, found.means()), found.costs(), wish);
  }

  /**
   * Costs a plan of the ledger.
   *
   * @param by what of the yarn on order counts as though it had come
   * @throws BadInput if there is none of that name, it is not finished, or it does not add up
   */
  public CostedPlan named(String name, ExpectedBy by, CostWish wish) throws BadInput {
    Found found = studio.read(session -> Found.of(studio, session, name, by));
    return CostedPlan.of(name, Answer.of(name, CheckPlan.plan(name, found.text()), found.means()), found.costs(), wish);
  }

  /**
   * Costs a plan file against a stock file, without a ledger, and so with nothing set.
   *
   * @throws BadInput naming what cannot be read, or what does not add up
   */
  public static CostedPlan files(Path planFile, Path stockFile, CostWish wish) throws BadInput {
    Answer answer = CheckFiles.check(planFile, stockFile);
    return CostedPlan.of(planFile.toString(), answer, CostMeans.of(answer.stock()), wish);
  }

  private record Found(Optional<String> text, Means means, CostMeans costs) {
    static Found of(Studio studio, Session session, String plan, ExpectedBy by) {
      return new Found(Plans.text(session, plan), Means.of(studio, session, plan, by), CostMeans.of(session, plan));
    }
  }
}
