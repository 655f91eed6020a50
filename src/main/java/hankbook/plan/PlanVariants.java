package hankbook.plan;

import hankbook.measure.Exact;
import hankbook.measure.Length;
import hankbook.measure.LengthUnit;
import hankbook.measure.Sett;
import hankbook.yarn.YarnColour;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.UnaryOperator;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * The same plan with one thing changed, as a weaver would change it in the plan's own fields. Where the number of ends changes, groups
 * counted in ends keep their proportion.
 */
public final class PlanVariants {
  private PlanVariants() {}

  /** With the length of its warp given outright; ends and width stay. */
  public static Plan withLength(Plan plan, Length length) {
    return plan.withWarp(plan.warp().withLength(Optional.of(length)));
  }

  /** With the length of its warp given outright, and the lengths woven that its wefts give in proportion, to whole millimetres. */
  public static Plan withClothLength(Plan plan, Length length) {
    BigFraction part = part(length, WarpLength.of(plan).total());
    return withLength(plan, length).withWefts(plan.wefts().stream().map(weft -> weft.withLength(weft.length().map(woven -> scaled(woven, part)))).toList());
  }

  /** With its ends given outright; the width follows. */
  public static Plan withEnds(Plan plan, int ends) {
    return plan.withWarp(plan.warp().withEnds(ends).withOrder(proportional(plan.warp().order(), ends)));
  }

  /** With another sett to the same width. Ends given outright are given anew, rounded up as ends that a width asks for are. */
  public static Plan withSett(Plan plan, Sett sett) {
    Warp old = plan.warp();
    Plan changed = plan.withWarp(old.withSett(sett));
    if (old.ends().isEmpty()) {
      return reordered(changed);
    }
    BigFraction width = old.sett().widthOf(old.ends().getAsInt() - old.selvedgeEnds());
    long multiples = Math.ceilDiv(Exact.roundedUp(sett.threadsIn(width)), (long) old.endsMultiple());
    return withEnds(changed, Math.toIntExact(multiples * old.endsMultiple() + old.selvedgeEnds()));
  }

  /** With so many of one of its kinds of piece, counted from 0. */
  public static Plan withPieces(Plan plan, int kind, int count) {
    List<Piece> pieces = new ArrayList<>(plan.pieces());
    pieces.set(kind, pieces.get(kind).withCount(count));
    return plan.withPieces(pieces);
  }

  /** With its longest piece of this length and the others in proportion, to whole millimetres, at least one; the warp is as long as they ask for. */
  public static Plan withPieceLength(Plan plan, Length longest) {
    Length before = longestPiece(plan);
    BigFraction part = part(longest, before);
    UnaryOperator<Length> scaled = length -> length.equals(before) ? longest : scaled(length, part);
    return plan.withPieces(plan.pieces().stream().map(piece -> piece.withLength(scaled.apply(piece.length()))).toList())
        .withWarp(plan.warp().withLength(Optional.empty()));
  }

  /** With no piece wider than this; the ends follow. */
  public static Plan withWidth(Plan plan, Length widest) {
    return reordered(plan.withPieces(plan.pieces().stream().map(piece -> piece.withWidth(Length.min(piece.width(), widest))).toList()));
  }

  /** With other picks in every weft that had these. */
  public static Plan withPicks(Plan plan, Sett from, Sett to) {
    return plan.withWefts(plan.wefts().stream().map(weft -> weft.picks().compareTo(from) == 0 ? weft.withPicks(to) : weft).toList());
  }

  /** With another length of warp given to sampling. */
  public static Plan withSampling(Plan plan, Length sampling) {
    return plan.withAllowances(plan.allowances().withSampling(sampling));
  }

  /** With one yarn in the place of another, in warp and weft. */
  public static Plan withYarn(Plan plan, YarnColour from, YarnColour to) {
    UnaryOperator<YarnColour> other = yarn -> yarn.equals(from) ? to : yarn;
    List<OrderEntry> order = plan.warp().order().stream().map(entry -> entry.withYarn(other.apply(entry.yarn()))).toList();
    return plan.withWarp(plan.warp().withOrder(order)).withWefts(plan.wefts().stream().map(weft -> weft.withYarn(other.apply(weft.yarn()))).toList());
  }

  /** The warp alone. */
  public static Plan withoutWeft(Plan plan) {
    return plan.withWefts(List.of());
  }

  /** The finished length of the longest piece. */
  public static Length longestPiece(Plan plan) {
    return most(plan, Piece::length);
  }

  /** The finished width of the widest piece. */
  public static Length widestPiece(Plan plan) {
    return most(plan, Piece::width);
  }

  private static Length most(Plan plan, Function<Piece, Length> of) {
    return plan.pieces().stream().map(of).max(Comparator.naturalOrder()).orElse(Length.ZERO);
  }

  private static BigFraction part(Length part, Length whole) {
    return BigFraction.of(part.tenthsOfMillimetre(), whole.tenthsOfMillimetre());
  }

  private static Length scaled(Length length, BigFraction part) {
    return Length.of(Math.max(1, Exact.whole(length.in(LengthUnit.MILLIMETRE).multiply(part), RoundingMode.FLOOR)), LengthUnit.MILLIMETRE);
  }

  private static Plan reordered(Plan plan) {
    return plan.withWarp(plan.warp().withOrder(proportional(plan.warp().order(), Width.of(plan).ends())));
  }

  private static List<OrderEntry> proportional(List<OrderEntry> order, int ends) {
    long counted = order.stream().mapToLong(PlanVariants::counted).sum();
    boolean shared = order.stream().anyMatch(entry -> entry.amount() instanceof OrderEntry.Share);
    if (counted == 0 || counted == ends || (shared && counted < ends)) {
      return order;
    }
    List<Long> parts = Apportionment.of(ends, order.stream().map(entry -> BigFraction.of(counted(entry), counted)).toList(), "the warp's order");
    List<OrderEntry> proportional = new ArrayList<>();
    for (int i = 0; i < order.size(); i++) {
      OrderEntry entry = order.get(i);
      proportional.add(entry.amount() instanceof OrderEntry.Ends ? entry.withEnds(Math.toIntExact(parts.get(i))) : entry);
    }
    return proportional;
  }

  private static long counted(OrderEntry entry) {
    return entry.amount() instanceof OrderEntry.Ends ends ? ends.ends() : 0;
  }
}
