package hankbook.plan;

import hankbook.measure.Length;
import hankbook.measure.Sett;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;

/**
 * The ends of a warp of units added up both ways: stretch by stretch, and all the units times the ends of each.
 *
 * @param rows the stretches from left to right, what is added at the left and right among them
 * @param endsPerUnit how many ends a unit has
 * @param selvedgeEnds ends at the edges, beside the stretches
 */
public record SectionSum(List<Row> rows, int endsPerUnit, int selvedgeEnds) {
  /**
   * One stretch of the warp.
   *
   * @param name what it is called
   * @param repeats how often it comes
   * @param units in each
   * @param ends in all of it
   * @param first its first end, counted from 1 without selvedges
   * @param from where it starts in the reed, from the left
   * @param width what it takes in the reed
   */
  public record Row(String name, int repeats, int units, int ends, int first, Length from, Length width) {
    /** Its last end. */
    public int last() {
      return first + ends - 1;
    }

    /** All its units. */
    public int allUnits() {
      return repeats * units;
    }
  }

  public SectionSum {
    rows = List.copyOf(rows);
  }

  /** The sums of a warp's units at its sett. */
  public static SectionSum of(Sections sections, Sett sett, int selvedgeEnds) {
    List<Section> stretches = new ArrayList<>();
    stretches.addAll(beside("to the left", sections.extendLeft()));
    for (int i = 0; i < sections.sections().size(); i++) {
      Section section = sections.sections().get(i);
      stretches.add(section.name().isEmpty() ? new Section("section " + (i + 1), section.repeats(), section.units()) : section);
    }
    stretches.addAll(beside("to the right", sections.extendRight()));
    List<Row> rows = new ArrayList<>();
    int before = 0;
    for (Section stretch : stretches) {
      int ends = Math.multiplyExact(stretch.allUnits(), sections.endsPerUnit());
      // Rounded as running sums, so that the widths add up to the whole.
      Length from = at(sett, before);
      rows.add(new Row(stretch.name(), stretch.repeats(), stretch.units(), ends, before + 1, from, at(sett, Math.addExact(before, ends)).minus(from)));
      before += ends;
    }
    return new SectionSum(rows, sections.endsPerUnit(), selvedgeEnds);
  }

  private static List<Section> beside(String name, int units) {
    return units == 0 ? List.of() : List.of(new Section(name, 1, units));
  }

  private static Length at(Sett sett, int ends) {
    return Length.ofTenths(sett.widthOf(ends), RoundingMode.HALF_UP);
  }

  /** All units. */
  public int units() {
    return rows.stream().mapToInt(Row::allUnits).sum();
  }

  /** The ends added stretch by stretch, without selvedges. */
  public int endsByStretch() {
    return rows.stream().mapToInt(Row::ends).sum();
  }

  /** The ends as all units times the ends of each, without selvedges. */
  public int endsByUnits() {
    return units() * endsPerUnit;
  }

  /** All ends with the selvedges. */
  public int ends() {
    return endsByStretch() + selvedgeEnds;
  }

  /** What the stretches take in the reed. */
  public Length width() {
    return rows.stream().map(Row::width).reduce(Length.ZERO, Length::plus);
  }

  /** The sum as a weaver writes it: {@code (12 + 3 x 36 + 9) x 4}. */
  public String arithmetic() {
    List<String> terms = rows.stream().map(row -> (row.repeats() == 1 ? "" : row.repeats() + " x ") + row.units()).toList();
    String units = "(" + String.join(" + ", terms) + ") x " + endsPerUnit;
    return selvedgeEnds == 0 ? units : units + " + " + selvedgeEnds;
  }
}
