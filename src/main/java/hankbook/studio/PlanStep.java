package hankbook.studio;

import hankbook.measure.Length;
import java.time.LocalDate;
import java.util.Optional;
import java.util.OptionalLong;

/**
 * A step in the life of a plan.
 *
 * @param stage which
 * @param state whether it was come to
 * @param date when it was come to; empty where it was not, or nobody wrote that down
 * @param amount of yarn that made it, or is in the cloth after it; nothing where it was not come to, or is made by no yarn
 * @param skeins how many skeins that is of
 * @param entry the number of the entry that made it last, where one did
 */
public record PlanStep(Stage stage, State state, Optional<LocalDate> date, Length amount, int skeins, OptionalLong entry) {
  /** The steps, in their order. */
  public enum Stage {
    PLANNED,
    RESERVED,
    ON_LOOM,
    CUT_OFF,
    SQUARED
  }

  /** Where a plan stands with a step. */
  public enum State {
    /** It was come to and left behind. */
    DONE,
    /** The plan is there now. */
    NOW,
    /** It comes next. */
    NEXT,
    /** It comes after that. */
    LATER,
    /** What comes after it was come to without it: yarn may be drawn straight from the shelf. */
    LEFT_OUT
  }

  PlanStep as(State other) {
    return new PlanStep(stage, other, date, amount, skeins, entry);
  }
}
