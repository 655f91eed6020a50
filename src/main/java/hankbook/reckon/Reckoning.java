package hankbook.reckon;

import hankbook.measure.Length;
import hankbook.plan.Making;
import hankbook.plan.Yardage;
import hankbook.yarn.YarnColour;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Where the yarn of a cloth went.
 *
 * @param yarns those of the plan in its order, also those that were never taken, then those that it does not name
 * @param really the ways of cloth and loom as they were
 */
public record Reckoning(List<YarnAccount> yarns, Realised really) {
  public Reckoning {
    yarns = List.copyOf(yarns);
  }

  /**
   * Holds what was used against what was planned.
   *
   * @throws hankbook.measure.Unreadable if the plan does not add up, or the ends counted are no more than its selvedges
   */
  public static Reckoning of(Made made) {
    Realised really = Realised.of(made);
    Substitution substitution = new Substitution(made, really);
    Yardage yardage = Yardage.of(made.plan());
    Making making = Making.of(made.plan());
    return new Reckoning(yarns(made, yardage).stream().map(used -> account(used, substitution, Purpose.of(used.yarn(), making, yardage.warp()))).toList(), really);
  }

  /** The yarns of the plan, nothing used of those that were never taken, then the others. */
  private static List<YarnUsed> yarns(Made made, Yardage yardage) {
    Map<YarnColour, YarnUsed> yarns = new LinkedHashMap<>();
    yardage.needs().forEach(need -> yarns.put(need.yarn(), new YarnUsed(need.yarn(), "", Optional.empty(), Length.ZERO, Length.ZERO, Length.ZERO, Length.ZERO)));
    made.used().forEach(used -> yarns.put(used.yarn(), used));
    return List.copyOf(yarns.values());
  }

  private static YarnAccount account(YarnUsed used, Substitution substitution, Map<Purpose, Length> purposes) {
    Map<Cause, Length> causes = substitution.causes(used.yarn(), used.used(), used.uncertainty());
    return new YarnAccount(used.yarn(), substitution.planned(used.yarn()), purposes, used.used(), used.uncertainty(), causes);
  }

  /** What one cause adds in all yarns. */
  public Length part(Cause cause) {
    return yarns.stream().map(yarn -> yarn.part(cause)).reduce(Length.ZERO, Length::plus);
  }

  /** What was planned of all yarns. */
  public Length planned() {
    return yarns.stream().map(YarnAccount::planned).reduce(Length.ZERO, Length::plus);
  }

  /** What was used of all yarns. */
  public Length used() {
    return yarns.stream().map(YarnAccount::used).reduce(Length.ZERO, Length::plus);
  }
}
