package hankbook.reckon;

import hankbook.plan.Plan;
import java.util.List;

/**
 * A plan whose cloth was cut off, and what is known of it.
 *
 * @param plan as it is held against what was used
 * @param actuals what was found
 * @param used yarn by yarn, in the plan's order, then what the plan does not name
 */
public record Made(Plan plan, Actuals actuals, List<YarnUsed> used) {
  public Made {
    used = List.copyOf(used);
  }
}
