package hankbook.plan;

import hankbook.yarn.YarnColour;

/**
 * One end or pick of a cloth as it looks.
 *
 * @param yarn the yarn and its colour
 * @param strands threads that go as one
 */
public record ClothThread(YarnColour yarn, int strands) {}
