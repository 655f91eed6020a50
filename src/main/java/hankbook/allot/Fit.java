package hankbook.allot;

import hankbook.measure.Length;
import hankbook.plan.Piece;
import hankbook.plan.Plan;
import hankbook.plan.PlanVariants;
import hankbook.yarn.Skein;
import java.util.List;
import java.util.OptionalLong;
import java.util.function.LongFunction;

/**
 * The question turned round: what is the most these skeins cover? Each answer is the largest that the same check does not call short, so
 * one step more is short.
 *
 * @param longestWarp for these ends, in whole steps of the plan's rounding, or of a centimetre where it has none
 * @param mostEnds for this warp length, in whole multiples and the selvedges
 * @param mostPieces all else held; empty where the plan has no pieces, more than one kind, or a warp length of its own
 * @param buy what covers each yarn that is short
 */
public record Fit(Length longestWarp, int mostEnds, OptionalLong mostPieces, List<Purchase> buy) {
  private static final Length CENTIMETRE = Length.parse("1 cm");

  public Fit {
    buy = List.copyOf(buy);
  }

  /** The most of everything, for a plan and the skeins that are free, with nothing set. */
  public static Fit of(Plan plan, List<Skein> stock) {
    return of(plan, stock, Judgement.DEFAULT);
  }

  /** The most of everything, for a plan and the skeins that are free. */
  public static Fit of(Plan plan, List<Skein> stock, Judgement judgement) {
    PlanCheck check = PlanCheck.of(plan, stock, judgement);
    Length warp = check.yardage().warp().total();
    int ends = check.yardage().width().ends();
    Length step = plan.allowances().roundUpTo().isPositive() ? plan.allowances().roundUpTo() : CENTIMETRE;
    long steps = most(count -> PlanVariants.withWarp(plan, ends, step.times(count)), stock, judgement);
    int multiple = plan.warp().endsMultiple();
    int selvedges = plan.warp().selvedgeEnds();
    long multiples = most(count -> PlanVariants.withWarp(plan, Math.toIntExact(count * multiple + selvedges), warp), stock, judgement);
    return new Fit(step.times(steps), multiples == 0 ? 0 : Math.toIntExact(multiples * multiple + selvedges), pieces(plan, stock, judgement), Purchase.of(check, stock, judgement));
  }

  private static OptionalLong pieces(Plan plan, List<Skein> stock, Judgement judgement) {
    if (plan.pieces().size() != 1 || plan.warp().length().isPresent()) {
      return OptionalLong.empty();
    }
    Piece piece = plan.pieces().get(0);
    return OptionalLong.of(most(count -> PlanVariants.withPieces(plan, piece, Math.toIntExact(count)), stock, judgement));
  }

  /** The largest count of at least 1 whose plan is not short, or 0: doubled until short, then halved in. More never needs less. */
  private static long most(LongFunction<Plan> planOf, List<Skein> stock, Judgement judgement) {
    if (PlanCheck.isShort(planOf.apply(1), stock, judgement)) {
      return 0;
    }
    long fits = 1;
    long tooMany = 2;
    while (!PlanCheck.isShort(planOf.apply(tooMany), stock, judgement)) {
      fits = tooMany;
      tooMany = Math.multiplyExact(tooMany, 2);
    }
    while (tooMany - fits > 1) {
      long middle = fits + (tooMany - fits) / 2;
      if (PlanCheck.isShort(planOf.apply(middle), stock, judgement)) {
        tooMany = middle;
      } else {
        fits = middle;
      }
    }
    return fits;
  }
}
