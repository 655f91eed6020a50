package hankbook.studio;

import hankbook.allot.Verdict;
import hankbook.measure.Length;
import java.util.Optional;

/**
 * How a plan of the ledger stands.
 *
 * @param name the plan
 * @param verdict whether the shelf covers it, the worst of its yarns; empty where the plan is not finished
 * @param unfinished what is missing or cannot be read in it; empty where it is finished
 * @param reserved for it, of all skeins together
 * @param onLoom of all skeins together
 * @param isBeingFinished whether what was found after its cloth is being entered
 * @param isFinished whether the book was squared after its cloth was cut off
 */
public record PlanStanding(
    String name, Optional<Verdict> verdict, String unfinished, Length reserved, Length onLoom, boolean isBeingFinished, boolean isFinished) {
  /** What is said of a plan that is finished. */
  public static final String SQUARED = "squared";

  /** What has become of it so far. */
  public String life() {
    if (onLoom.isPositive()) {
      return isBeingFinished ? "cut off" : "on the loom";
    } else if (reserved.isPositive()) {
      return "reserved";
    }
    return isFinished ? SQUARED : "planned";
  }
}
