package hankbook.plan;

import hankbook.measure.Unreadable;
import java.util.ArrayList;
import java.util.List;

/**
 * The ends of a warp counted in units: {@code (3 x 36 + 12 + 9) x 4} is three repeats of 36 units, 12 more on the left and 9 on the
 * right, of 4 ends each.
 *
 * @param sections from left to right, at least one
 * @param endsPerUnit how many ends a unit has, at least 1
 * @param extendLeft units more on the left, at least 0
 * @param extendRight units more on the right, at least 0
 */
public record Sections(List<Section> sections, int endsPerUnit, int extendLeft, int extendRight) {
  public Sections {
    sections = List.copyOf(sections);
    if (sections.isEmpty()) {
      throw new Unreadable("", "sections, where there are units to the left or right of them");
    }
    if (endsPerUnit < 1) {
      throw new Unreadable(Integer.toString(endsPerUnit), "ends per unit of at least 1");
    }
    if (extendLeft < 0 || extendRight < 0) {
      throw new Unreadable(Integer.toString(Math.min(extendLeft, extendRight)), "units to the left and right of at least 0");
    }
  }

  /** All its ends, without selvedges. */
  public int ends() {
    return Math.multiplyExact(units(), endsPerUnit);
  }

  /** All its units. */
  public int units() {
    return Math.addExact(Section.unitsOf(sections), Math.addExact(extendLeft, extendRight));
  }

  /**
   * The same with another section in the place of one.
   *
   * @param number which, counted from 1
   */
  public Sections with(int number, Section changed) {
    List<Section> others = new ArrayList<>(sections);
    others.set(number - 1, changed);
    return new Sections(others, endsPerUnit, extendLeft, extendRight);
  }
}
