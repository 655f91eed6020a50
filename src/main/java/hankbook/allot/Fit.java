package hankbook.allot;

import hankbook.measure.Length;
import hankbook.measure.Sett;
import hankbook.plan.Plan;
import hankbook.plan.PlanVariants;
import hankbook.plan.Succession;
import hankbook.plan.Width;
import hankbook.plan.Yardage;
import hankbook.yarn.Skein;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.function.LongFunction;

/**
 * The question turned round: what is the most these skeins cover? Each answer is what the same check does not call short of the plan as
 * the weaver would then write it, and one step more is short.
 *
 * @param longestWarp for these ends and this width, in whole steps of the plan's rounding, or of a centimetre where it has none; zero
 *     where none is short enough
 * @param warpAlone where a weft is short whatever the length of the warp: the longest warp if that weft were there
 * @param mostEnds for this warp length, in whole multiples and units, and the selvedges; a written order in whole repeats; 0 where none are few enough
 * @param mostWidth the width of the most ends
 * @param closestSett to the same width, in half threads to the inch or centimetre; empty where none is open enough, or the order of ends
 *     is written, which another number of ends would break
 * @param mostPieces all else held; empty where the plan has no pieces, more than one kind, or a warp length of its own
 * @param longestPiece the finished length of the longest piece, the others in proportion, in whole centimetres or half inches; empty
 *     where the plan has no pieces, none are short enough, or the warp has a length of its own
 * @param buy what covers each yarn that is short
 * @param remedies what would make a short plan fit, the least change first
 * @param standIns what of the shelf could stand in for each short yarn, the largest first
 * @param proven whether all that was called short was settled to be; false only where a search was given up for its size
 */
public record Fit(
    Length longestWarp,
    Optional<Length> warpAlone,
    int mostEnds,
    Optional<Width> mostWidth,
    Optional<Sett> closestSett,
    OptionalLong mostPieces,
    Optional<Length> longestPiece,
    List<Purchase> buy,
    List<Remedy> remedies,
    List<StandIn> standIns,
    boolean proven) {
  public Fit {
    buy = List.copyOf(buy);
    remedies = List.copyOf(remedies);
    standIns = List.copyOf(standIns);
  }

  /**
   * The most of everything.
   *
   * @param plan the plan
   * @param stock the skeins that are free
   * @param judgement by which it is judged
   */
  public static Fit of(Plan plan, List<Skein> stock, Judgement judgement) {
    PlanCheck check = PlanCheck.of(plan, stock, judgement);
    Trial trial = new Trial(stock, judgement);
    Question question = new Question(plan, trial);
    Length longest = question.longestWarp(plan);
    Length alone = longest.isZero() ? question.longestWarp(PlanVariants.withoutWeft(plan)) : Length.ZERO;
    Optional<Plan> widest = question.widest();
    List<Purchase> buy = Purchase.of(check, stock, judgement);
    List<StandIn> standIns = StandIns.of(check, stock, judgement);
    Optional<Sett> closest = question.closestSett();
    OptionalLong pieces = question.mostPieces();
    Optional<Length> piece = question.longestPiece();
    List<Remedy> remedies = Remedies.of(check, trial, standIns, buy);
    return new Fit(
        longest,
        Optional.of(alone).filter(Length::isPositive),
        widest.map(most -> Yardage.of(most).width().ends()).orElse(0),
        widest.map(most -> Yardage.of(most).width()),
        closest,
        pieces,
        piece,
        buy,
        remedies,
        standIns,
        trial.proven());
  }

  private record Question(Plan plan, Trial trial) {
    /** No yarn lies closer. */
    private static final long MOST_HALVES = 10_000;

    Length longestWarp(Plan of) {
      Length step = Steps.ofWarp(plan);
      return step.times(most(steps -> PlanVariants.withLength(of, step.times(steps))));
    }

    Optional<Plan> widest() {
      Optional<Succession> written = plan.warp().succession();
      if (written.isPresent() && written.get().repeats() == 0) {
        return Optional.of(plan).filter(asItIs -> !trial.isShort(asItIs));
      }
      LongFunction<Plan> ofSteps = written.isPresent() ? times -> PlanVariants.withRepeats(plan, times) : this::ofSteps;
      long steps = most(ofSteps);
      return steps == 0 ? Optional.empty() : Optional.of(ofSteps.apply(steps));
    }

    private Plan ofSteps(long count) {
      return PlanVariants.withEnds(plan, Math.toIntExact(Math.addExact(Math.multiplyExact(count, (long) plan.warp().endsStep()), plan.warp().selvedgeEnds())));
    }

    Optional<Sett> closestSett() {
      if (plan.warp().succession().isPresent()) {
        return Optional.empty();
      }
      Sett like = plan.warp().sett();
      long halves = Largest.of(count -> count <= MOST_HALVES && !trial.isShort(PlanVariants.withSett(plan, Steps.sett(count, like))));
      return halves == 0 ? Optional.empty() : Optional.of(Steps.sett(halves, like));
    }

    OptionalLong mostPieces() {
      if (plan.pieces().size() != 1 || plan.warp().length().isPresent()) {
        return OptionalLong.empty();
      }
      return OptionalLong.of(most(count -> PlanVariants.withPieces(plan, 0, Math.toIntExact(count))));
    }

    Optional<Length> longestPiece() {
      if (plan.pieces().isEmpty() || plan.warp().length().isPresent()) {
        return Optional.empty();
      }
      Length step = Steps.ofLength(PlanVariants.longestPiece(plan));
      return Optional.of(step.times(most(count -> PlanVariants.withPieceLength(plan, step.times(count))))).filter(Length::isPositive);
    }

    private long most(LongFunction<Plan> planOf) {
      return Largest.of(count -> !trial.isShort(planOf.apply(count)));
    }
  }
}
