package hankbook.allot;

import hankbook.plan.Amount;
import hankbook.plan.Because;
import hankbook.plan.Combined;
import hankbook.plan.NeedBecause;
import hankbook.plan.Plan;
import hankbook.plan.Term;
import hankbook.yarn.Skein;
import hankbook.yarn.Uncertainty;
import hankbook.yarn.YarnColour;
import java.util.List;
import java.util.Optional;

/**
 * Why a yarn's cover is what it is.
 *
 * @param need what the plan takes of it
 * @param free what the shelf has of it for the plan
 * @param margin free less need
 * @param uncertainty how surely the margin is known
 * @param risk of running short
 */
public record CoverBecause(Because need, Because free, Because margin, Because uncertainty, Because risk) {
  /**
   * The cover of one yarn.
   *
   * @param stock the skeins that the plan was held against; where they changed since, what was free is said without its skeins
   */
  public static CoverBecause of(Cover cover, Plan plan, List<Skein> stock) {
    Because need = NeedBecause.of(plan, cover.yarn());
    Because free = free(cover, stock);
    Because margin = Because.made(Term.MARGIN, cover.yarn().toString(), Amount.Stretch::new, Combined.DIFFERENCE, List.of(free, need));
    Because uncertainty = uncertainty(cover);
    return new CoverBecause(need, free, margin, uncertainty, risk(cover, margin, uncertainty));
  }

  /** The cover of a yarn of a plan; empty where the plan has none of it. */
  public static Optional<CoverBecause> of(PlanCheck check, YarnColour yarn, List<Skein> stock) {
    return check.covers().stream().filter(cover -> cover.yarn().equals(yarn)).findFirst().map(cover -> of(cover, check.plan(), stock));
  }

  private static Because free(Cover cover, List<Skein> stock) {
    String yarn = cover.yarn().toString();
    List<Because> skeins =
        PlanCheck.skeinsOf(cover.yarn(), stock).stream().filter(skein -> skein.isMeasured() && !skein.holds().isZero()).map(SkeinBecause::free).toList();
    if (!skeins.isEmpty()) {
      Because free = Because.sum(Term.FREE, yarn, Amount.Stretch::new, skeins);
      if (free.amount().equals(Amount.Stretch.of(cover.free()))) {
        return free;
      }
    }
    return Because.given(Term.FREE, yarn, Amount.Stretch.of(cover.free()));
  }

  private static Because uncertainty(Cover cover) {
    Uncertainty doubt = cover.doubt();
    Amount combined = Amount.Stretch.of(doubt.combined());
    String yarn = cover.yarn().toString();
    if (doubt.parts().isEmpty()) {
      return Because.given(Term.UNCERTAINTY, yarn, combined);
    }
    List<Because> parts = doubt.parts().stream().map(part -> Because.given(Term.ERROR, part.phrase(), Amount.Stretch.of(part.error()))).toList();
    return new Because(Term.UNCERTAINTY, yarn, combined, Combined.ROOT, parts);
  }

  private static Because risk(Cover cover, Because margin, Because uncertainty) {
    List<Because> parts = cover.uncertainty().isZero()
        ? List.of(margin, uncertainty)
        : List.of(Because.made(Term.MARGIN_BY_UNCERTAINTY, cover.yarn().toString(), Amount.Factor::new, Combined.QUOTIENT, List.of(margin, uncertainty)));
    return new Because(Term.RISK, cover.yarn().toString(), Amount.Likelihood.of(cover.risk()), Combined.RULE, parts);
  }
}
