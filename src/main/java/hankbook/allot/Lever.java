package hankbook.allot;

import hankbook.measure.Length;
import hankbook.measure.Sett;
import hankbook.plan.Piece;
import hankbook.plan.Plan;
import hankbook.plan.PlanVariants;
import hankbook.plan.Succession;
import hankbook.plan.WarpLength;
import hankbook.plan.Weft;
import hankbook.plan.Yardage;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.LongFunction;
import java.util.stream.IntStream;

/**
 * A quantity of a plan that could be less, counted in steps.
 *
 * @param least the fewest steps that leave something to weave
 * @param asked the fewest steps that make what the plan asks for, or more
 * @param plan the plan with so many steps of it
 * @param change what has then changed
 */
record Lever(long least, long asked, LongFunction<Plan> plan, Function<Plan, Change> change) {
  /** Every quantity of a plan that its weaver might give up some of. */
  static List<Lever> of(PlanCheck check) {
    Plan plan = check.plan();
    List<Lever> levers = new ArrayList<>();
    levers.add(sampling(plan, check.yardage()));
    Optional<Succession> written = plan.warp().succession();
    if (written.isEmpty()) {
      levers.add(sett(plan));
    }
    plan.wefts().stream().map(Weft::picks).distinct().filter(picks -> mayDiffer(plan, picks)).forEach(picks -> levers.add(picks(plan, picks)));
    levers.add(written.map(order -> repeats(plan, order, check.yardage())).orElseGet(() -> narrower(plan, check.yardage())));
    if (plan.warp().length().isPresent()) {
      levers.add(warp(plan, check.yardage().warp()));
    } else {
      levers.add(pieceLength(plan));
    }
    IntStream.range(0, plan.pieces().size()).forEach(kind -> levers.add(pieces(plan, kind)));
    return levers;
  }

  private static Lever narrower(Plan plan, Yardage yardage) {
    return plan.warp().ends().isPresent() || plan.pieces().isEmpty() ? ends(plan, yardage) : width(plan, yardage);
  }

  /** A written order is made narrower by whole repeats: cut anywhere else it would not be that order any longer. */
  private static Lever repeats(Plan plan, Succession written, Yardage yardage) {
    return new Lever(
        1,
        written.repeats(),
        count -> PlanVariants.withRepeats(plan, count),
        changed -> narrower(plan, changed, yardage, yardage.width().finished(plan.allowances()), Yardage.of(changed).width().finished(plan.allowances())));
  }

  private static Lever sampling(Plan plan, Yardage yardage) {
    Length from = plan.allowances().sampling();
    Length step = Steps.ofLength(from);
    return new Lever(
        0,
        Steps.reaching(from, step),
        count -> PlanVariants.withSampling(plan, step.times(count)),
        changed -> new Change.LessSampling(from, changed.allowances().sampling(), yardage.warp().total()));
  }

  private static Lever sett(Plan plan) {
    Sett from = plan.warp().sett();
    return new Lever(
        leastOpen(from),
        Steps.halvesReaching(from),
        count -> PlanVariants.withSett(plan, Steps.sett(count, from)),
        changed -> new Change.OpenerSett(from, changed.warp().sett(), Yardage.of(changed).width().ends(), sectionsLost(plan, changed)));
  }

  /** At less than half its sett or picks it would be another cloth; common practice. */
  private static long leastOpen(Sett from) {
    return Math.ceilDiv(Steps.halvesReaching(from), 2L);
  }

  /** Wefts of other picks to the same width and length would be taken for the same weft once their picks are the same. */
  private static boolean mayDiffer(Plan plan, Sett picks) {
    return plan.wefts().stream().filter(weft -> weft.picks().compareTo(picks) == 0).noneMatch(
        weft -> plan.wefts().stream().anyMatch(
            other -> other.picks().compareTo(picks) != 0 && other.width().equals(weft.width()) && other.length().equals(weft.length())));
  }

  private static Lever picks(Plan plan, Sett from) {
    int first = IntStream.range(0, plan.wefts().size()).filter(i -> plan.wefts().get(i).picks().equals(from)).findFirst().orElseThrow();
    return new Lever(
        leastOpen(from),
        Steps.halvesReaching(from),
        count -> PlanVariants.withPicks(plan, from, Steps.sett(count, from)),
        changed -> new Change.FewerPicks(from, changed.wefts().get(first).picks()));
  }

  private static Lever ends(Plan plan, Yardage yardage) {
    int step = plan.warp().endsStep();
    int selvedges = plan.warp().selvedgeEnds();
    return new Lever(
        1,
        Math.ceilDiv(yardage.width().ends() - selvedges, step),
        count -> PlanVariants.withEnds(plan, Math.toIntExact(count * step + selvedges)),
        changed -> narrower(plan, changed, yardage, yardage.width().finished(plan.allowances()), Yardage.of(changed).width().finished(plan.allowances())));
  }

  private static Lever width(Plan plan, Yardage yardage) {
    Length from = PlanVariants.widestPiece(plan);
    Length step = Steps.ofWidth(from);
    return new Lever(
        1,
        Steps.reaching(from, step),
        count -> PlanVariants.withWidth(plan, step.times(count)),
        changed -> narrower(plan, changed, yardage, from, PlanVariants.widestPiece(changed)));
  }

  private static Change narrower(Plan plan, Plan changed, Yardage before, Length from, Length to) {
    return new Change.Narrower(before.width(), Yardage.of(changed).width(), from, to, sectionsLost(plan, changed));
  }

  private static boolean sectionsLost(Plan plan, Plan changed) {
    return plan.warp().sections().isPresent() && changed.warp().sections().isEmpty();
  }

  private static Lever pieceLength(Plan plan) {
    Length from = PlanVariants.longestPiece(plan);
    Length step = Steps.ofLength(from);
    return new Lever(
        1,
        Steps.reaching(from, step),
        count -> PlanVariants.withPieceLength(plan, step.times(count)),
        changed -> new Change.ShorterPieces(lengths(plan), lengths(changed)));
  }

  private static List<Length> lengths(Plan plan) {
    return plan.pieces().stream().map(Piece::length).toList();
  }

  /** A warp whose length is given outright, as far down as its pieces, or some cloth where it has none, still fit on it. */
  private static Lever warp(Plan plan, WarpLength before) {
    Length step = Steps.ofWarp(plan);
    long waste = Steps.reaching(WarpLength.forPieces(plan.pieces(), plan.allowances()).total(), step);
    return new Lever(
        plan.pieces().isEmpty() ? waste + 1 : waste,
        Steps.reaching(before.total(), step),
        count -> PlanVariants.withClothLength(plan, step.times(count)),
        changed -> new Change.ShorterWarp(before.total(), Yardage.of(changed).warp().total()));
  }

  private static Lever pieces(Plan plan, int kind) {
    Piece piece = plan.pieces().get(kind);
    return new Lever(
        1,
        piece.count(),
        count -> PlanVariants.withPieces(plan, kind, Math.toIntExact(count)),
        changed -> new Change.FewerPieces(piece.name(), piece.count(), changed.pieces().get(kind).count()));
  }
}
