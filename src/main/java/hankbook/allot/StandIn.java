package hankbook.allot;

import hankbook.measure.Length;
import hankbook.plan.Plan;
import hankbook.yarn.ColourDifference;
import hankbook.yarn.YarnColour;
import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * A yarn on the shelf that could stand in the place of one that is short.
 *
 * @param yarn the one on the shelf
 * @param place the one that is short
 * @param free what the plan's other uses leave of it, at least 0
 * @param heavier by what part of the short yarn's grist it is heavier; negative where it is lighter; none where a grist is not known
 * @param difference how far apart their colours look; none where a colour is not known
 * @param covers whether it covers all that the short yarn was to serve, beside the plan's other uses of it, by the same check
 * @param plan the plan with it in that place
 */
public record StandIn(
    YarnColour yarn, YarnColour place, Length free, Optional<BigFraction> heavier, Optional<ColourDifference> difference, boolean covers, Plan plan) {}
