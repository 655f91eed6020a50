package hankbook.plan;

import hankbook.measure.Length;
import hankbook.yarn.YarnColour;

/**
 * Ends that are wound alike: of one yarn, with as many strands.
 *
 * @param yarn the yarn and its colour
 * @param perEnd yarn in one end, strands and winding included
 * @param kind which of the needs of its yarn for the warp, counted from 0 in their order: a stripe that must come from one dye lot is its own
 */
public record WoundEnd(YarnColour yarn, Length perEnd, int kind) {}
