package hankbook.plan;

import hankbook.measure.Length;
import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.function.Function;

/**
 * Why a warp is so long, and why each of its parts is.
 *
 * @param total the length of each end, the sum of its parts
 * @param parts every part, zero ones too
 * @param woven cloth off the loom that takes picks, sampling included
 */
public record WarpBecause(Because total, Map<WarpPart, Because> parts, Because woven) {
  public WarpBecause {
    parts = Collections.unmodifiableMap(new EnumMap<>(parts));
  }

  /** The warp of a plan. */
  public static WarpBecause of(Plan plan) {
    WarpLength warp = WarpLength.of(plan);
    return plan.pieces().isEmpty() ? leftForCloth(warp, plan.allowances()) : forPieces(plan, warp);
  }

  private static WarpBecause forPieces(Plan plan, WarpLength warp) {
    Allowances allowances = plan.allowances();
    Map<WarpPart, Because> parts = new EnumMap<>(WarpPart.class);
    parts.put(WarpPart.CLOTH, ofPieces(Term.CLOTH, Term.PIECE_LENGTH, plan.pieces(), Piece::length));
    parts.put(WarpPart.HEMS, ofPieces(Term.HEMS, Term.PIECE_HEMS, plan.pieces(), Piece::hems));
    parts.put(WarpPart.FRINGE, ofPieces(Term.FRINGE, Term.PIECE_FRINGE, plan.pieces(), Piece::fringe));
    parts.put(WarpPart.GAPS, gaps(plan));
    Because off = offLoom(part(parts, WarpPart.CLOTH), part(parts, WarpPart.HEMS), allowances);
    Because offRecorded = nearest(Term.OFF_LOOM_RECORDED, off);
    Because woven = Because.made(Term.WOVEN_UP, Amount.Stretch::new, Combined.PRODUCT, off, takeUp(allowances));
    Because wovenRecorded = nearest(Term.WOVEN_UP_RECORDED, woven);
    parts.put(WarpPart.SHRINKAGE, less(Term.SHRINKAGE, offRecorded, part(parts, WarpPart.CLOTH), part(parts, WarpPart.HEMS)));
    parts.put(WarpPart.TAKE_UP, less(Term.TAKE_UP, wovenRecorded, offRecorded));
    parts.put(WarpPart.SAMPLING, Because.given(Term.SAMPLING, Amount.Stretch.of(allowances.sampling())));
    parts.put(WarpPart.LOOM_WASTE, Because.given(Term.LOOM_WASTE, Amount.Stretch.of(allowances.loomWaste())));
    List<Because> unwoven =
        List.of(part(parts, WarpPart.FRINGE), part(parts, WarpPart.GAPS), part(parts, WarpPart.SAMPLING), part(parts, WarpPart.LOOM_WASTE));
    parts.put(WarpPart.ROUNDING, rounding(plan, woven, wovenRecorded, unwoven));
    return of(warp, parts, Because.made(Term.WOVEN, Amount.Stretch::new, Combined.SUM, off, sampled(allowances)));
  }

  /** Without pieces the length is given, and what it leaves is cloth. */
  private static WarpBecause leftForCloth(WarpLength warp, Allowances allowances) {
    Because given = Because.given(Term.GIVEN_LENGTH, Amount.Stretch.of(warp.total()));
    Because sampling = Because.given(Term.SAMPLING, Amount.Stretch.of(allowances.sampling()));
    Because waste = Because.given(Term.LOOM_WASTE, Amount.Stretch.of(allowances.loomWaste()));
    Because left = less(Term.LEFT_FOR_CLOTH, given, sampling, waste);
    Because none = Because.given(Term.NOTHING, Amount.Stretch.of(Length.ZERO));
    Because wovenUp = Because.made(Term.LEFT_TO_WEAVE, Amount.Stretch::new, Combined.LARGEST, none, left);
    Because off = Because.made(Term.OFF_LOOM_OF_GIVEN, Amount.Stretch::new, Combined.QUOTIENT, wovenUp, takeUp(allowances));
    Because offRecorded = nearest(Term.OFF_LOOM_RECORDED, off);
    Because cloth =
        nearest(
            Term.CLOTH_OF_GIVEN,
            Because.made(Term.CLOTH_OF_GIVEN_EXACT, Amount.Stretch::new, Combined.PRODUCT, off, Factors.left(Term.KEPT_OF_LENGTH, Term.LENGTH_SHRINKAGE, allowances.lengthShrinkage())));
    Because shrinkage = less(Term.SHRINKAGE_OF_GIVEN, offRecorded, cloth);
    Map<WarpPart, Because> parts = new EnumMap<>(WarpPart.class);
    List.of(WarpPart.HEMS, WarpPart.FRINGE, WarpPart.GAPS).forEach(part -> parts.put(part, none));
    parts.put(WarpPart.CLOTH, cloth);
    parts.put(WarpPart.SHRINKAGE, shrinkage);
    parts.put(WarpPart.TAKE_UP, less(Term.TAKE_UP_OF_GIVEN, wovenUp, cloth, shrinkage));
    parts.put(WarpPart.SAMPLING, sampling);
    parts.put(WarpPart.LOOM_WASTE, waste);
    parts.put(WarpPart.ROUNDING, less(Term.LEFT_BY_GIVEN, given, wovenUp, sampling, waste));
    return of(warp, parts, Because.made(Term.WOVEN, Amount.Stretch::new, Combined.SUM, off, sampled(allowances)));
  }

  private static WarpBecause of(WarpLength warp, Map<WarpPart, Because> parts, Because woven) {
    List<Because> there = parts.entrySet().stream().filter(part -> !warp.parts().getOrDefault(part.getKey(), Length.ZERO).isZero()).map(Map.Entry::getValue).toList();
    return new WarpBecause(Because.sum(Term.WARP_LENGTH, "", Amount.Stretch::new, there), parts, woven);
  }

  private static Because part(Map<WarpPart, Because> parts, WarpPart part) {
    return Objects.requireNonNull(parts.get(part));
  }

  private static Because ofPieces(Term term, Term each, List<Piece> pieces, Function<Piece, Length> length) {
    List<Because> kinds = new ArrayList<>();
    for (Piece piece : pieces) {
      kinds.add(
          Because.made(
              Term.OF_PIECES, piece.name(), Amount.Stretch::new, Combined.PRODUCT,
              List.of(Because.given(Term.PIECES, Amount.Count.of(piece.count())), Because.given(each, Amount.Stretch.of(length.apply(piece))))));
    }
    return Because.sum(term, "", Amount.Stretch::new, kinds);
  }

  private static Because gaps(Plan plan) {
    Because pieces = Because.given(Term.PIECES, Amount.Count.of(plan.pieces().stream().mapToLong(Piece::count).sum()));
    Because between = Because.made(Term.GAPS_COUNT, Amount.Count::new, Combined.DIFFERENCE, pieces, Because.given(Term.ONE, Amount.Count.of(1)));
    return Because.made(Term.GAPS, Amount.Stretch::new, Combined.PRODUCT, between, Because.given(Term.GAP, Amount.Stretch.of(plan.allowances().gap())));
  }

  private static Because offLoom(Because cloth, Because hems, Allowances allowances) {
    Because both = Because.made(Term.CLOTH_AND_HEMS, Amount.Stretch::new, Combined.SUM, cloth, hems);
    return Because.made(Term.OFF_LOOM, Amount.Stretch::new, Combined.QUOTIENT, both, Factors.left(Term.KEPT_OF_LENGTH, Term.LENGTH_SHRINKAGE, allowances.lengthShrinkage()));
  }

  private static Because takeUp(Allowances allowances) {
    return Factors.yarnPerCloth(Term.YARN_PER_CLOTH, Term.WARP_TAKE_UP, allowances.warpTakeUp());
  }

  private static Because sampled(Allowances allowances) {
    Because sampling = Because.given(Term.SAMPLING, Amount.Stretch.of(allowances.sampling()));
    return Because.made(Term.SAMPLED, Amount.Stretch::new, Combined.QUOTIENT, sampling, takeUp(allowances));
  }

  private static Because rounding(Plan plan, Because woven, Because wovenRecorded, List<Because> unwoven) {
    List<Because> taken = new ArrayList<>(unwoven);
    taken.addFirst(wovenRecorded);
    if (plan.warp().length().isPresent()) {
      taken.addFirst(Because.given(Term.GIVEN_LENGTH, Amount.Stretch.of(plan.warp().length().get())));
      return Because.made(Term.LEFT_BY_GIVEN, "", Amount.Stretch::new, Combined.DIFFERENCE, taken);
    }
    List<Because> exact = new ArrayList<>(unwoven);
    exact.addFirst(woven);
    taken.addFirst(rounded(Because.made(Term.UNROUNDED, "", Amount.Stretch::new, Combined.SUM, exact), plan.allowances().roundUpTo()));
    return Because.made(Term.ROUNDING, "", Amount.Stretch::new, Combined.DIFFERENCE, taken);
  }

  private static Because rounded(Because exact, Length step) {
    return step.isPositive()
        ? Because.made(Term.WARP_ROUNDED, Amount.Stretch::new, Combined.STEP, exact, Because.given(Term.ROUNDING_STEP, Amount.Stretch.of(step)))
        : nearest(Term.WARP_TO_TENTH, exact);
  }

  private static Because nearest(Term term, Because exact) {
    return Because.made(term, Amount.Stretch::new, Combined.NEAREST, exact);
  }

  private static Because less(Term term, Because... parts) {
    return Because.made(term, Amount.Stretch::new, Combined.DIFFERENCE, parts);
  }
}
