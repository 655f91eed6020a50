package hankbook.gear;

import hankbook.measure.Length;
import hankbook.measure.Unreadable;
import hankbook.yarn.OneLine;

/**
 * A loom of the studio.
 *
 * @param name what it is called, not blank
 * @param width the widest warp it weaves, in the reed; over zero
 * @param waste warp that it cannot weave, at least zero
 * @param shafts at least 1
 */
public record Loom(String name, Length width, Length waste, int shafts) {
  public Loom {
    name = OneLine.of(name);
    if (name.isEmpty()) {
      throw new Unreadable(name, "a name for the loom");
    }
    if (!width.isPositive()) {
      throw new Unreadable(width.toString(), "a weaving width over zero");
    }
    if (waste.isNegative()) {
      throw new Unreadable(waste.toString(), "a loom waste of at least zero");
    }
    if (shafts < 1) {
      throw new Unreadable(Integer.toString(shafts), "shafts of at least 1");
    }
  }
}
