package hankbook.cli;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import hankbook.exchange.JsonText;
import hankbook.measure.Exact;
import hankbook.measure.LengthUnit;
import hankbook.measure.MassUnit;
import hankbook.plan.Amount;
import hankbook.plan.Because;
import java.math.RoundingMode;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.apache.commons.numbers.fraction.BigFraction;

/** How figures are reckoned, as one JSON object. */
final class BecauseJson {
  private static final int PLACES = 9;

  private BecauseJson() {}

  static String of(String plan, Map<String, List<Because>> figures) {
    ObjectNode root = JsonText.object().put("plan", plan);
    ArrayNode array = root.putArray("figures");
    figures.forEach((name, trees) -> trees.forEach(tree -> put(array.addObject().put("figure", name), tree)));
    return JsonText.of(root);
  }

  private static void put(ObjectNode node, Because tree) {
    node.put("term", tree.term().key()).put("of", tree.of().english());
    node.put("value", Exact.decimal(number(tree.amount()), PLACES, RoundingMode.HALF_UP).stripTrailingZeros()).put("unit", unit(tree.amount()));
    node.put("combined", tree.how().name().toLowerCase(Locale.ROOT)).put("text", tree.term().formula());
    ArrayNode parts = node.putArray("parts");
    tree.parts().forEach(part -> put(parts.addObject(), part));
  }

  private static BigFraction number(Amount amount) {
    return switch (amount) {
      case Amount.Stretch(BigFraction tenths) -> tenths.divide(LengthUnit.METRE.tenthsOfMillimetre());
      case Amount.Density density -> density.exact().multiply(LengthUnit.METRE.tenthsOfMillimetre());
      case Amount.Weight(BigFraction milligrams) -> milligrams.divide(MassUnit.GRAM.milligrams());
      case Amount.Fineness fineness -> fineness.grist().tex();
      case Amount.Coins coins -> coins.exact().divide(BigFraction.of(10).pow(coins.currency().getDecimalPlaces()));
      case Amount.Count _, Amount.Factor _, Amount.Likelihood _, Amount.Hours _ -> amount.exact();
    };
  }

  private static String unit(Amount amount) {
    return switch (amount) {
      case Amount.Stretch _ -> "m";
      case Amount.Density _ -> "/m";
      case Amount.Weight _ -> "g";
      case Amount.Fineness _ -> "tex";
      case Amount.Coins coins -> coins.currency().getCode();
      case Amount.Hours _ -> "h";
      case Amount.Count _, Amount.Factor _, Amount.Likelihood _ -> "";
    };
  }
}
