package hankbook.plan;

import hankbook.measure.Unreadable;
import java.util.List;
import java.util.Optional;

/**
 * One warp and its weft, as the weaver entered it.
 *
 * @param name what the weaver calls it, not blank
 * @param pieces what is cut from it; empty only where the warp gives its own ends and length
 * @param warp the warp
 * @param wefts the weft yarns
 * @param weftSuccession the order of picks as it is written, where it is; it is repeated along the cloth
 * @param allowances what is added for the ways of cloth and loom
 * @param threads wound together, at least 1
 * @param dressing loom, reed, weave and sleying, as far as they are said
 */
public record Plan(
    String name, List<Piece> pieces, Warp warp, List<Weft> wefts, Optional<Succession> weftSuccession, Allowances allowances, int threads, Dressing dressing) {
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
    if (weftSuccession.isPresent()) {
      WeftOrder.checkWritten(weftSuccession.get(), wefts);
    }
  }

  /** Without a written order of picks, and saying nothing of loom, reed, weave and sleying. */
  public Plan(String name, List<Piece> pieces, Warp warp, List<Weft> wefts, Allowances allowances, int threads) {
    this(name, pieces, warp, wefts, Optional.empty(), allowances, threads, Dressing.UNSAID);
  }

  /** The same plan with other threads wound together. */
  public Plan wound(int together) {
    return new Plan(name, pieces, warp, wefts, weftSuccession, allowances, together, dressing);
  }

  /** How many pieces there are to finish: what is woven without pieces is one. */
  public int toFinish() {
    return pieces.isEmpty() ? 1 : pieces.stream().mapToInt(Piece::count).sum();
  }

  /** The same plan with other pieces. */
  public Plan withPieces(List<Piece> others) {
    return new Plan(name, others, warp, wefts, weftSuccession, allowances, threads, dressing);
  }

  /** The same plan with another warp. */
  public Plan withWarp(Warp other) {
    return new Plan(name, pieces, other, wefts, weftSuccession, allowances, threads, dressing);
  }

  /** The same plan with other wefts. */
  public Plan withWefts(List<Weft> others) {
    return new Plan(name, pieces, warp, others, weftSuccession, allowances, threads, dressing);
  }

  /** The same plan with other allowances. */
  public Plan withAllowances(Allowances others) {
    return new Plan(name, pieces, warp, wefts, weftSuccession, others, threads, dressing);
  }
}
