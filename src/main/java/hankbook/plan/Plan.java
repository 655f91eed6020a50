package hankbook.plan;

import hankbook.measure.Unreadable;
import java.util.List;

/**
 * One warp and its weft, as the weaver entered it.
 *
 * @param name what the weaver calls it, not blank
 * @param pieces what is cut from it; empty only where the warp gives its own ends and length
 * @param warp the warp
 * @param wefts the weft yarns
 * @param allowances what is added for the ways of cloth and loom
 * @param threads wound together, at least 1
 * @param dressing loom, reed, weave and sleying, as far as they are said
 */
public record Plan(String name, List<Piece> pieces, Warp warp, List<Weft> wefts, Allowances allowances, int threads, Dressing dressing) {
  /** A plan that says nothing of its loom, reed, weave and sleying. */
  public Plan(String name, List<Piece> pieces, Warp warp, List<Weft> wefts, Allowances allowances, int threads) {
    this(name, pieces, warp, wefts, allowances, threads, Dressing.UNSAID);
  }

  public Plan {
    pieces = List.copyOf(pieces);
    wefts = List.copyOf(wefts);
    if (name.isBlank()) {
      throw new Unreadable(name, "a name for the plan");
    }
    if (threads < 1) {
      throw new Unreadable(Integer.toString(threads), "threads wound together of at least 1");
    }
    if (pieces.isEmpty() && (warp.ends().isEmpty() || warp.length().isEmpty())) {
      throw new Unreadable("", "pieces, or a warp with both its ends and its length");
    }
    if (!pieces.isEmpty() && wefts.stream().anyMatch(weft -> weft.length().isPresent())) {
      throw new Unreadable("length", "no length woven in the weft of a plan that has pieces");
    }
  }
}
