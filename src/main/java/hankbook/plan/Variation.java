package hankbook.plan;

import hankbook.measure.Length;
import hankbook.measure.Sett;
import hankbook.measure.Unreadable;
import hankbook.yarn.YarnColour;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * A few values of a plan said otherwise. What is not said stays as the plan has it.
 *
 * @param sett to the same width; ends given outright are given anew
 * @param counts how many of a kind of piece, by the kind's place among the pieces, counted from 0
 * @param width finished, over zero: of the widest pieces; others stay as wide as they are, or become no wider
 * @param sampling length of warp given to it
 * @param yarns in the place of others, in warp, selvedges and weft; all at once, so that two may change places
 */
public record Variation(Optional<Sett> sett, Map<Integer, Integer> counts, Optional<Length> width, Optional<Length> sampling, Map<YarnColour, YarnColour> yarns) {
  /** The plan as it is. */
  public static final Variation NONE = new Variation(Optional.empty(), Map.of(), Optional.empty(), Optional.empty(), Map.of());

  public Variation {
    counts = Collections.unmodifiableMap(new LinkedHashMap<>(counts));
    yarns = Collections.unmodifiableMap(new LinkedHashMap<>(yarns));
    if (width.isPresent() && !width.get().isPositive()) {
      throw new Unreadable(width.get().toString(), "a finished width over zero");
    }
    if (sampling.isPresent() && sampling.get().isNegative()) {
      throw new Unreadable(sampling.get().toString(), "a length for sampling of at least 0");
    }
  }

  /** Whether nothing is said otherwise. */
  public boolean isNone() {
    return equals(NONE);
  }

  /**
   * The plan so.
   *
   * @throws Unreadable if the plan has no such piece or yarn, or its width is not made by its pieces, or the plan does not add up so
   */
  public Plan of(Plan plan) {
    Plan varied = plan;
    for (Map.Entry<Integer, Integer> count : counts.entrySet()) {
      if (count.getKey() < 0 || count.getKey() >= plan.pieces().size()) {
        throw new Unreadable("a count of piece " + (count.getKey() + 1), "one of the plan's " + plan.pieces().size() + " kinds of piece");
      }
      varied = PlanVariants.withPieces(varied, count.getKey(), count.getValue());
    }
    varied = sampling.isPresent() ? PlanVariants.withSampling(varied, sampling.get()) : varied;
    varied = width.isPresent() ? wide(varied, width.get()) : varied;
    varied = sett.isPresent() && sett.get().compareTo(plan.warp().sett()) != 0 ? PlanVariants.withSett(varied, sett.get()) : varied;
    return exchanged(varied);
  }

  private static Plan wide(Plan plan, Length width) {
    if (plan.pieces().isEmpty() || plan.warp().ends().isPresent()) {
      throw new Unreadable("a width of " + width, "none for a plan whose ends are given outright, since these make its width");
    }
    Length widest = PlanVariants.widestPiece(plan);
    List<Piece> pieces = new ArrayList<>();
    plan.pieces().forEach(piece -> pieces.add(piece.width().equals(widest) ? piece.withWidth(width) : piece));
    return PlanVariants.withWidth(plan.withPieces(pieces), width);
  }

  private Plan exchanged(Plan plan) {
    Optional<YarnColour> stranger = yarns.keySet().stream().filter(yarn -> !uses(plan, yarn)).findFirst();
    if (stranger.isPresent()) {
      throw new Unreadable("another yarn for " + stranger.get(), "one for a yarn of the plan");
    }
    return PlanVariants.withYarns(plan, yarns);
  }

  private static boolean uses(Plan plan, YarnColour yarn) {
    return plan.warp().order().stream().anyMatch(entry -> entry.yarn().equals(yarn))
        || plan.wefts().stream().anyMatch(weft -> weft.yarn().equals(yarn))
        || plan.warp().selvedge().filter(edge -> edge.yarn().equals(yarn)).isPresent();
  }
}
