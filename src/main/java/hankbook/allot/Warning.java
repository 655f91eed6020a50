package hankbook.allot;

import hankbook.yarn.YarnColour;

/**
 * Something the weaver should know before she winds.
 *
 * @param code what kind of thing
 * @param yarn the yarn it is about
 * @param text in the weaver's words
 */
public record Warning(Code code, YarnColour yarn, String text) {
  /** The kinds of warning; the names are those of the answer file. */
  public enum Code {
    SHORT,
    TIGHT,
    BROKEN_ENDS,
    MIXED_LOTS,
    UNKNOWN_YARN,
    UNMEASURED,
    WEIGHT_DISAGREES,
    WINDING,
    WARP_TOO_SHORT,
    WIDER_IN_REED,
    UNPROVEN
  }
}
