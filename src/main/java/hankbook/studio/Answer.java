package hankbook.studio;

import hankbook.allot.Fit;
import hankbook.allot.PlanCheck;
import hankbook.allot.Remedies;
import hankbook.allot.Remedy;
import hankbook.allot.StandIns;
import hankbook.exchange.BadInput;
import hankbook.measure.Unreadable;
import hankbook.plan.Plan;
import hankbook.yarn.Skein;
import java.util.List;
import java.util.function.Supplier;

/**
 * A plan held against the skeins that are free for it.
 *
 * @param stock every skein, with what of it is free for this plan
 * @param check what it comes to
 */
public record Answer(List<Skein> stock, PlanCheck check) {
  public Answer {
    stock = List.copyOf(stock);
  }

  /**
   * Holds a plan against skeins.
   *
   * @param source what the plan was read from, for messages
   * @throws BadInput where the plan does not add up
   */
  static Answer of(String source, Plan plan, List<Skein> stock) throws BadInput {
    return new Answer(stock, reckoned(source, () -> PlanCheck.of(plan, stock)));
  }

  /**
   * The most of the plan that the stock covers.
   *
   * @throws BadInput where its numbers are too large to try larger ones
   */
  public Fit fit() throws BadInput {
    return reckoned(check.plan().name(), () -> Fit.of(check.plan(), stock));
  }

  /**
   * What would make the plan fit where it is short, the least change first.
   *
   * @throws BadInput where its numbers are too large to try others
   */
  public List<Remedy> remedies() throws BadInput {
    return reckoned(check.plan().name(), () -> Remedies.of(check, stock, StandIns.GRIST_TOLERANCE));
  }

  static <T> T reckoned(String source, Supplier<T> reckoning) throws BadInput {
    try {
      return reckoning.get();
    } catch (Unreadable unreadable) {
      throw new BadInput(source + ": " + unreadable.getMessage());
    } catch (ArithmeticException overflow) {
      throw new BadInput(source + ": found numbers that make more than a ledger can hold, wanted smaller ones");
    }
  }
}
