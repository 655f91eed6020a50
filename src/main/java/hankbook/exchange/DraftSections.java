package hankbook.exchange;

import hankbook.measure.Arithmetic;
import hankbook.measure.Sett;
import hankbook.measure.Unreadable;
import hankbook.plan.Section;
import hankbook.plan.SectionSum;
import hankbook.plan.Sections;
import java.util.List;
import java.util.Optional;

/** The units of a plan that is being entered, added up as soon as they can be read, whatever else is still wanted. */
public final class DraftSections {
  private DraftSections() {}

  /** The sums; empty where there are no sections, or one of their fields or the sett cannot be read. */
  public static Optional<SectionSum> sum(PlanDraft draft) {
    if (draft.rows(PlanPart.SECTIONS).isEmpty()) {
      return Optional.empty();
    }
    try {
      List<Section> sections = draft.rows(PlanPart.SECTIONS).stream().map(DraftSections::section).toList();
      int perUnit = Arithmetic.count(warp(draft, "endsPerUnit"));
      Sections units = new Sections(sections, perUnit, count(warp(draft, "extendLeft"), 0), count(warp(draft, "extendRight"), 0));
      Sett sett = Sett.parse(warp(draft, "sett"));
      units.ends();
      return Optional.of(SectionSum.of(units, sett, count(warp(draft, "selvedgeEnds"), 0)));
    } catch (Unreadable | ArithmeticException unfinished) {
      return Optional.empty();
    }
  }

  private static Section section(DraftRow row) {
    return new Section(row.text("name"), count(row.text("repeats"), 1), count(row.text("units"), 0));
  }

  private static String warp(PlanDraft draft, String key) {
    return draft.text(PlanField.of(PlanPart.WARP, key));
  }

  private static int count(String text, int otherwise) {
    return text.isBlank() ? otherwise : Arithmetic.count(text);
  }
}
