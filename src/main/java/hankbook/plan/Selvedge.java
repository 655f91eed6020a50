package hankbook.plan;

import hankbook.measure.Unreadable;
import hankbook.yarn.YarnColour;

/**
 * What the selvedge ends of a warp are of, where they are of their own.
 *
 * @param yarn the yarn and its colour
 * @param strands threads that go as one end, at least 1
 */
public record Selvedge(YarnColour yarn, int strands) {
  public Selvedge {
    if (strands < 1) {
      throw new Unreadable(Integer.toString(strands), "strands of at least 1");
    }
  }
}
