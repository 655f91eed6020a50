package hankbook.plan;

import hankbook.measure.Unreadable;
import java.util.List;

/**
 * A stretch of a warp made of units, for weaves whose pattern is counted in units.
 *
 * @param repeats how often it comes, at least 1
 * @param units how many units each time, at least 1
 */
public record Section(int repeats, int units) {
  public Section {
    if (repeats < 1) {
      throw new Unreadable(Integer.toString(repeats), "repeats of at least 1");
    }
    if (units < 1) {
      throw new Unreadable(Integer.toString(units), "units of at least 1");
    }
  }

  /** All units of these sections. */
  public static int unitsOf(List<Section> sections) {
    return sections.stream().mapToInt(section -> Math.multiplyExact(section.repeats, section.units)).reduce(0, Math::addExact);
  }

  /** All ends of these sections: summed section by section, which is the same as all the units times the ends of each. */
  public static int endsOf(List<Section> sections, int endsPerUnit) {
    return sections.stream()
        .mapToInt(section -> Math.multiplyExact(Math.multiplyExact(section.repeats, section.units), endsPerUnit))
        .reduce(0, Math::addExact);
  }
}
