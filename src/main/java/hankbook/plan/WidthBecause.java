package hankbook.plan;

import hankbook.measure.Length;
import java.util.ArrayList;
import java.util.List;

/**
 * Why a warp is so wide in the reed and has so many ends.
 *
 * @param inReed the width in the reed
 * @param ends all ends, selvedges included
 */
public record WidthBecause(Because inReed, Because ends) {
  /** The width and ends of a plan. */
  public static WidthBecause of(Plan plan) {
    Warp warp = plan.warp();
    return warp.ends().isPresent() ? ofEnds(warp, warp.ends().getAsInt()) : ofWidth(plan);
  }

  private static WidthBecause ofEnds(Warp warp, int given) {
    Because ends = warp.sections().map(sections -> bySections(sections, warp)).orElseGet(() -> Because.given(Term.ENDS, Amount.Count.of(given)));
    Because beside = Because.made(Term.ENDS_BESIDE_SELVEDGES, Amount.Count::new, Combined.DIFFERENCE, ends, selvedges(warp));
    return new WidthBecause(Because.made(Term.WIDTH_OF_ENDS, Amount.Stretch::new, Combined.QUOTIENT, beside, sett(warp)), ends);
  }

  private static WidthBecause ofWidth(Plan plan) {
    Warp warp = plan.warp();
    Allowances allowances = plan.allowances();
    Because inReed =
        Because.made(
            Term.WIDTH_IN_REED, Amount.Stretch::new, Combined.QUOTIENT, widest(plan.pieces()),
            Factors.left(Term.KEPT_OF_WIDTH, Term.WIDTH_SHRINKAGE, allowances.widthShrinkage()), Factors.left(Term.KEPT_BY_DRAW_IN, Term.DRAW_IN, allowances.drawIn()));
    Because across = Because.made(Term.ENDS_ACROSS, Amount.Count::new, Combined.PRODUCT, inReed, sett(warp));
    Because whole = Because.made(Term.WHOLE_ENDS, Amount.Count::new, Combined.WHOLE, across);
    Because multiple = Because.given(Term.ENDS_MULTIPLE, Amount.Count.of(warp.endsMultiple()));
    Because units = warp.endsMultiple() == 1 ? whole : Because.made(Term.ENDS_IN_UNITS, Amount.Count::new, Combined.STEP, whole, multiple);
    return new WidthBecause(inReed, Because.made(Term.ENDS, Amount.Count::new, Combined.SUM, units, selvedges(warp)));
  }

  private static Because widest(List<Piece> pieces) {
    List<Because> widths = pieces.stream().map(piece -> width(piece.name(), piece.width())).toList();
    return widths.size() == 1 ? widths.getFirst() : Because.made(Term.WIDEST, "", Amount.Stretch::new, Combined.LARGEST, widths);
  }

  private static Because width(String piece, Length width) {
    return Because.given(Term.FINISHED_WIDTH, piece, Amount.Stretch.of(width));
  }

  private static Because bySections(Sections sections, Warp warp) {
    List<Because> parts = new ArrayList<>();
    for (SectionSum.Row row : SectionSum.of(sections, warp.sett(), warp.selvedgeEnds()).rows()) {
      parts.add(
          Because.made(
              Term.ENDS_OF_SECTION, row.name(), Amount.Count::new, Combined.PRODUCT,
              List.of(count(Term.REPEATS, row.repeats()), count(Term.UNITS, row.units()), count(Term.ENDS_PER_UNIT, sections.endsPerUnit()))));
    }
    parts.add(selvedges(warp));
    return Because.made(Term.ENDS, "", Amount.Count::new, Combined.SUM, parts);
  }

  private static Because selvedges(Warp warp) {
    return count(Term.SELVEDGE_ENDS, warp.selvedgeEnds());
  }

  private static Because count(Term term, long count) {
    return Because.given(term, Amount.Count.of(count));
  }

  private static Because sett(Warp warp) {
    return Because.given(Term.SETT, new Amount.Density(warp.sett()));
  }
}
