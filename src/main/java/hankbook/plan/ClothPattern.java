package hankbook.plan;

import hankbook.measure.Sett;
import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * What the cloth of a plan looks like in plain weave.
 *
 * @param warp the ends from left to right, selvedges at both edges
 * @param weft the picks of the ground: of the wefts in the written order, else of the first that cross the whole reed; empty where there
 *     are none
 * @param sett ends to a unit of width in the reed
 * @param picks picks of the ground to a unit of length; the sett where there are none
 */
public record ClothPattern(Band warp, Optional<Band> weft, Sett sett, Sett picks) {
  /**
   * The pattern of a plan.
   *
   * @throws hankbook.measure.Unreadable if the order does not account for every end
   */
  public static ClothPattern of(Plan plan) {
    Yardage yardage = Yardage.of(plan);
    Optional<Band> weft = WeftBand.of(plan, yardage.warp());
    Sett picks = WeftBand.ground(plan).map(ground -> ground.getFirst().picks()).orElse(plan.warp().sett());
    return new ClothPattern(WarpBand.of(plan.warp(), yardage.width().ends()), weft, plan.warp().sett(), picks);
  }

  /** Whether the end lies over the pick where they cross; both counted from 0. */
  public boolean isWarpOnTop(long end, long pick) {
    return (end + pick) % 2 == 0;
  }

  /** What is seen where an end and a pick cross, both counted from 0; the end alone where the plan has no weft. */
  public ClothThread at(long end, long pick) {
    return weft.isPresent() && !isWarpOnTop(end, pick) ? weft.get().at(pick) : warp.at(end);
  }

  /** How tall a pick stands for the width of an end: the sett over the picks. */
  public BigFraction pickPerEnd() {
    return sett.perTenth().divide(picks.perTenth());
  }
}
