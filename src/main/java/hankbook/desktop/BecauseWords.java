package hankbook.desktop;

import hankbook.desktop.say.Say;
import hankbook.measure.LengthUnit;
import hankbook.measure.DurationText;
import hankbook.measure.Grist;
import hankbook.measure.Mass;
import hankbook.measure.Exact;
import hankbook.plan.Amount;
import hankbook.plan.Because;
import hankbook.plan.BecauseText;
import hankbook.plan.Term;
import java.math.RoundingMode;
import java.util.EnumSet;
import java.util.Set;
import org.apache.commons.numbers.fraction.BigFraction;

/** How the figures of a plan and what they are made of are written on the screen: finely enough that the eye can add them up. */
final class BecauseWords implements BecauseText.Written {
  static final BecauseWords ON_SCREEN = new BecauseWords();

  private static final int FINE = 3;
  private static final int OF_WIDTHS = 2;
  private static final int OF_RISKS = 2;
  private static final Set<Term> WIDTHS = EnumSet.of(Term.FINISHED_WIDTH, Term.WIDEST, Term.WIDTH_IN_REED, Term.WIDTH_OF_ENDS);
  private static final Set<Term> OF_CLOTH = EnumSet.range(Term.WIDTH_OF_ENDS, Term.WARP_LENGTH);

  private BecauseWords() {}

  @Override
  public String name(Because figure) {
    String name = Say.known(figure.term().words());
    return figure.isOfOne() ? Say.text("{0}: {1}", name, Wording.phrase(figure.of())) : name;
  }

  @Override
  public String formula(Because figure) {
    String formula = Say.known(figure.read().term().formula());
    return figure.read().equals(figure) ? formula : (formula + " " + Say.known(figure.term().formula())).strip();
  }

  @Override
  public String amount(Because figure) {
    return switch (figure.amount()) {
      case Amount.Stretch(BigFraction tenths) -> length(figure.term(), tenths);
      case Amount.Count(BigFraction count) -> Wording.number(count, FINE);
      case Amount.Factor(BigFraction factor) -> Wording.percent(factor, FINE);
      case Amount.Likelihood(BigFraction chance) -> Wording.percent(chance, OF_RISKS);
      case Amount.Density density -> Wording.sett(density.sett());
      case Amount.Weight(BigFraction milligrams) -> Wording.mass(new Mass(Exact.whole(milligrams, RoundingMode.HALF_UP)));
      case Amount.Fineness(Grist grist) -> TypedText.shown(grist.toString());
      case Amount.Coins coins -> Wording.money(coins.money());
      case Amount.Hours hours -> DurationText.rounded(hours.time());
    };
  }

  @Override
  public String asAbove() {
    return Say.text("as above");
  }

  private static String length(Term term, BigFraction tenths) {
    boolean width = WIDTHS.contains(term);
    LengthUnit unit = width ? Wording.units().cloth().unit() : OF_CLOTH.contains(term) ? Wording.units().cloth().longUnit() : Wording.units().yarn().unit();
    return Wording.number(tenths.divide(unit.tenthsOfMillimetre()), width ? OF_WIDTHS : FINE) + " " + unit.symbol();
  }
}
