package hankbook.reckon;

import hankbook.measure.Grist;
import hankbook.measure.Length;
import hankbook.yarn.YarnColour;
import java.util.Optional;

/**
 * A skein as the book has it for a plan before that plan's loom is emptied.
 *
 * @param code its own mark
 * @param yarn the yarn and its colour
 * @param grist the grist that is known best of it
 * @param onLoom of it for the plan, at least zero
 * @param reserved of it for the plan, at least zero
 * @param free of it on the shelf, at least zero
 * @param promised of it to other plans, at least zero
 */
public record DrawnSkein(String code, YarnColour yarn, Optional<Grist> grist, Length onLoom, Length reserved, Length free, Length promised) {
  /** What of it may be taken for the plan beside what is on its loom. */
  Length spare() {
    return free.plus(reserved);
  }

  /** What should be wound on it still, if all that is on the loom was used. */
  Length neverLeft() {
    return spare().plus(promised);
  }

  /** Whether the plan has any of it. */
  boolean isOfThePlan() {
    return onLoom.isPositive() || reserved.isPositive();
  }
}
