package hankbook.studio;

import hankbook.reckon.Made;
import hankbook.reckon.Squared;
import java.time.LocalDate;
import java.util.List;

/**
 * What squaring the book of a plan comes to.
 *
 * @param plan its name
 * @param planVersion the version of the plan that its yarn was taken for
 * @param date the day that its entries bear
 * @param squared what becomes of each skein
 * @param made the plan as its yarn was taken for it, and what it really used
 * @param yarns in the plan's order, then what it does not name
 */
public record Finishing(String plan, int planVersion, LocalDate date, Squared squared, Made made, List<UsedAgainstPlan> yarns) {
  public Finishing {
    yarns = List.copyOf(yarns);
  }

  /** The yarns of which more stays unexplained than may without a reason. */
  public List<UsedAgainstPlan> wantingReason() {
    return yarns.stream().filter(UsedAgainstPlan::wantsReason).toList();
  }
}
