package hankbook.plan;

import hankbook.measure.Length;
import hankbook.yarn.YarnColour;

/**
 * Ends that are wound alike: of one yarn, with as many strands.
 *
 * @param yarn the yarn and its colour
 * @param perEnd yarn in one end, strands and winding included
 */
public record WoundEnd(YarnColour yarn, Length perEnd) {}
