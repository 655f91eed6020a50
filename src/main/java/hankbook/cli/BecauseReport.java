package hankbook.cli;

import hankbook.measure.DurationText;
import hankbook.measure.Exact;
import hankbook.measure.LengthUnit;
import hankbook.measure.MassUnit;
import hankbook.measure.MoneyText;
import hankbook.plan.Amount;
import hankbook.plan.Because;
import hankbook.plan.BecauseText;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.apache.commons.numbers.fraction.BigFraction;

/** How figures are reckoned, as a page to read: each with its parts set in below it. */
final class BecauseReport implements BecauseText.Written {
  private static final int METRES = 4;
  private static final int FINE = 4;

  private BecauseReport() {}

  static String of(String plan, Map<String, List<Because>> figures) {
    List<String> lines = new ArrayList<>(List.of(plan));
    for (Because figure : figures.values().stream().flatMap(List::stream).toList()) {
      lines.add("");
      lines.addAll(BecauseText.lines(figure, new BecauseReport()));
    }
    return String.join(System.lineSeparator(), lines);
  }

  @Override
  public String name(Because figure) {
    return figure.term().words() + (figure.isOfOne() ? " of " + figure.of() : "");
  }

  @Override
  public String formula(Because figure) {
    String formula = figure.read().term().formula();
    return figure.read().equals(figure) ? formula : formula + " " + figure.term().formula();
  }

  @Override
  public String amount(Because figure) {
    return switch (figure.amount()) {
      case Amount.Stretch(BigFraction tenths) -> Exact.plain(tenths.divide(LengthUnit.METRE.tenthsOfMillimetre()), METRES) + " m";
      case Amount.Count(BigFraction count) -> Exact.plain(count, FINE);
      case Amount.Factor(BigFraction factor) -> Exact.plain(factor.multiply(100), FINE) + " %";
      case Amount.Likelihood(BigFraction chance) -> Exact.plain(chance.multiply(100), 2) + " %";
      case Amount.Density density -> density.sett().toString();
      case Amount.Weight(BigFraction milligrams) -> Exact.plain(milligrams.divide(MassUnit.GRAM.milligrams()), 3) + " g";
      case Amount.Fineness fineness -> fineness.grist().toString();
      case Amount.Coins coins -> MoneyText.print(coins.money());
      case Amount.Hours hours -> DurationText.rounded(hours.time());
    };
  }

  @Override
  public String asAbove() {
    return "as above";
  }
}
