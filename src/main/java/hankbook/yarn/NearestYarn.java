package hankbook.yarn;

import hankbook.measure.Length;

/**
 * A yarn of a shelf beside a colour that is wanted.
 *
 * @param yarn the yarn and its colour
 * @param hex what it looks like, as {@code #rrggbb}
 * @param difference how far it looks from what is wanted
 * @param holds what its skeins hold together
 */
public record NearestYarn(YarnColour yarn, String hex, ColourDifference difference, Length holds) {}
