package hankbook.allot;

import static org.assertj.core.api.Assertions.assertThat;

import hankbook.measure.Length;
import hankbook.measure.Sett;
import hankbook.plan.Plan;
import hankbook.plan.PlanVariants;
import hankbook.yarn.Skein;
import java.math.BigDecimal;
import java.util.List;
import java.util.function.Supplier;

/** Holds every answer of a fit against the check of the plan a weaver would then write: it passes, and one step more is short. */
final class OneStepMore {
  private final Plan plan;
  private final List<Skein> stock;

  private OneStepMore(Plan plan, List<Skein> stock) {
    this.plan = plan;
    this.stock = stock;
  }

  static void verify(Plan plan, Fit fit, List<Skein> stock) {
    OneStepMore more = new OneStepMore(plan, stock);
    more.longestWarp(fit);
    more.mostEnds(fit);
    more.closestSett(fit);
    more.mostPieces(fit);
    more.longestPiece(fit);
  }

  private void longestWarp(Fit fit) {
    Length step = plan.allowances().roundUpTo().isPositive() ? plan.allowances().roundUpTo() : Length.parse("1 cm");
    covered(fit.longestWarp().isPositive(), () -> PlanVariants.withLength(plan, fit.longestWarp()));
    isShort(PlanVariants.withLength(plan, fit.longestWarp().plus(step)));
    fit.warpAlone().ifPresent(alone -> {
      covered(true, () -> PlanVariants.withLength(PlanVariants.withoutWeft(plan), alone));
      isShort(PlanVariants.withLength(PlanVariants.withoutWeft(plan), alone.plus(step)));
    });
  }

  private void mostEnds(Fit fit) {
    covered(fit.mostEnds() > 0, () -> PlanVariants.withEnds(plan, fit.mostEnds()));
    int from = fit.mostEnds() > 0 ? fit.mostEnds() : plan.warp().selvedgeEnds();
    isShort(PlanVariants.withEnds(plan, from + plan.warp().endsStep()));
  }

  private void closestSett(Fit fit) {
    fit.closestSett().ifPresent(sett -> {
      covered(true, () -> PlanVariants.withSett(plan, sett));
      isShort(PlanVariants.withSett(plan, new Sett(sett.threads().add(halfAThread(sett)), sett.span())));
    });
  }

  /** To the inch or the centimetre; ten centimetres have five. */
  private static BigDecimal halfAThread(Sett sett) {
    return new BigDecimal(sett.span().equals(Length.parse("10 cm")) ? "5" : "0.5");
  }

  private void mostPieces(Fit fit) {
    fit.mostPieces().ifPresent(most -> {
      covered(most > 0, () -> PlanVariants.withPieces(plan, 0, Math.toIntExact(most)));
      isShort(PlanVariants.withPieces(plan, 0, Math.toIntExact(most + 1)));
    });
  }

  private void longestPiece(Fit fit) {
    fit.longestPiece().ifPresent(most -> {
      covered(true, () -> PlanVariants.withPieceLength(plan, most));
      isShort(PlanVariants.withPieceLength(plan, most.plus(Steps.ofLength(PlanVariants.longestPiece(plan)))));
    });
  }

  private void covered(boolean there, Supplier<Plan> changed) {
    if (there) {
      assertThat(Plainly.check(changed.get(), stock).isShort()).isFalse();
    }
  }

  private void isShort(Plan changed) {
    assertThat(Plainly.check(changed, stock).isShort()).isTrue();
  }
}
