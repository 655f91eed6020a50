package hankbook.reckon;

import hankbook.measure.Length;
import hankbook.measure.Phrase;
import hankbook.plan.Making;
import hankbook.plan.Piece;
import hankbook.plan.Plan;
import hankbook.yarn.YarnColour;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;

/** What became of the length of a warp. */
final class WarpWays {
  private final Made made;
  private final WarpAsWound warp;
  private final Optional<Length> wound;
  private final Optional<Found<Length>> loomWaste;

  /**
   * @param making the plan with the ends that were counted
   * @param unlikely where is said what cannot be
   */
  WarpWays(Made made, Making making, List<Unlikely> unlikely) {
    this.made = made;
    warp = made.actuals().warp();
    wound = wound(made);
    Optional<Found<Length>> waste = warp.loomWaste().map(length -> new Found<>(length, Phrase.of("its length as measured"))).or(() -> ofThrums(made, making));
    loomWaste = waste.filter(found -> wound.isEmpty() || found.value().compareTo(wound.get()) < 0);
    if (loomWaste.isEmpty()) {
      waste.ifPresent(never -> unlikely.add(new Unlikely("loom waste", never.value(), Phrase.of("less than the {0} of the warp", wound.get()), never.from())));
    }
  }

  /** How long a warp was, where that is known: as it was measured, or because the plan is of a warp that was wound already. */
  static Optional<Length> wound(Made made) {
    return made.actuals().warp().length().or(() -> made.plan().warp().length());
  }

  Optional<Found<Length>> loomWaste() {
    return loomWaste;
  }

  Optional<Found<Length>> sampling() {
    return warp.sampling().map(length -> new Found<>(length, Phrase.of("its length as measured")));
  }

  /** What is left of the warp for the cloth, over the cloth that was made of it, less one. */
  Optional<Found<BigFraction>> takeUp() {
    Optional<Length> cloth = made.actuals().cloth().lengthOffLoom();
    if (wound.isEmpty() || cloth.isEmpty() || loomWaste.isEmpty()) {
      return Optional.empty();
    }
    Length sampled = warp.sampling().orElse(made.plan().allowances().sampling());
    Length unwoven = unwoven(made);
    BigFraction wovenUp = wound.get().minus(loomWaste.get().value()).minus(sampled).minus(unwoven).exactTenths();
    Phrase from = Phrase.of("{0} of cloth off the loom, of {1} of warp less {2}", cloth.get(), wound.get(), Phrase.list(less(sampled, unwoven)));
    return Optional.of(new Found<>(wovenUp.divide(cloth.get().exactTenths()).subtract(BigFraction.ONE), from));
  }

  private List<Phrase> less(Length sampled, Length unwoven) {
    List<Phrase> less = new ArrayList<>(List.of(Phrase.of("{0} of loom waste", loomWaste.orElseThrow().value())));
    if (!sampled.isZero()) {
      less.add(warp.sampling().isEmpty() ? Phrase.of("{0} of sampling as planned", sampled) : Phrase.of("{0} of sampling", sampled));
    }
    if (!unwoven.isZero()) {
      less.add(Phrase.of("{0} of fringes and gaps as planned", unwoven));
    }
    return less;
  }

  /** Fringes and gaps as they are planned, of as many pieces as were made. */
  static Length unwoven(Made made) {
    Plan plan = made.plan();
    long planned = plan.pieces().stream().mapToLong(Piece::count).sum();
    if (planned == 0) {
      return Length.ZERO;
    }
    long pieces = made.actuals().cloth().pieces().orElse(Math.toIntExact(planned));
    Length fringes = plan.pieces().stream().map(piece -> piece.fringe().times(piece.count())).reduce(Length.ZERO, Length::plus);
    Length ofThese = Length.ofTenths(fringes.exactTenths().multiply(BigFraction.of(pieces, planned)), RoundingMode.HALF_UP);
    return ofThese.plus(plan.allowances().gap().times(Math.max(0, pieces - 1)));
  }

  private static Optional<Found<Length>> ofThrums(Made made, Making making) {
    Map<YarnColour, Long> strands = making.withRepairs(0).strands();
    List<YarnUsed> thrown = made.used().stream().filter(used -> used.thrums().isPositive() && strands.getOrDefault(used.yarn(), 0L) > 0).toList();
    long threads = thrown.stream().mapToLong(used -> strands.getOrDefault(used.yarn(), 0L)).sum();
    if (threads == 0) {
      return Optional.empty();
    }
    Length thrums = thrown.stream().map(YarnUsed::thrums).reduce(Length.ZERO, Length::plus);
    Length each = Length.ofTenths(thrums.exactTenths().divide(threads), RoundingMode.HALF_UP);
    return Optional.of(new Found<>(each, Phrase.of("{0} of thrums from {1} threads", thrums, threads)));
  }
}
