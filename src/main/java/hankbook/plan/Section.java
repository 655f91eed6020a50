package hankbook.plan;

import hankbook.measure.Unreadable;
import hankbook.yarn.OneLine;
import java.util.List;

/**
 * A stretch of a warp made of units, for weaves whose pattern is counted in units.
 *
 * @param name what the weaver calls it; may be empty
 * @param repeats how often it comes, at least 1
 * @param units how many units each time, at least 1
 */
public record Section(String name, int repeats, int units) {
  public Section {
    name = OneLine.of(name);
    if (repeats < 1) {
      throw new Unreadable(Integer.toString(repeats), "repeats of at least 1");
    }
    if (units < 1) {
      throw new Unreadable(Integer.toString(units), "units of at least 1");
    }
  }

  /** Without a name. */
  public Section(int repeats, int units) {
    this("", repeats, units);
  }

  /** All its units. */
  public int allUnits() {
    return Math.multiplyExact(repeats, units);
  }

  /** All units of these sections. */
  public static int unitsOf(List<Section> sections) {
    return sections.stream().mapToInt(Section::allUnits).reduce(0, Math::addExact);
  }
}
