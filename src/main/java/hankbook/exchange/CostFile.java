package hankbook.exchange;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import hankbook.cost.Comparison;
import hankbook.cost.CostLine;
import hankbook.cost.Labour;
import hankbook.cost.PieceCost;
import hankbook.cost.PlanCost;
import hankbook.cost.PlanSpent;
import hankbook.cost.Price;
import hankbook.cost.Pricing;
import hankbook.cost.Remnant;
import hankbook.measure.MoneyText;
import java.math.BigDecimal;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.joda.money.Money;

/** Writes what a plan costs as one JSON object. */
public final class CostFile {
  private CostFile() {}

  /**
   * What is written of one cost.
   *
   * @param cost of the plan
   * @param price where one was asked
   * @param spent on its yarn so far, where any was
   */
  public record Costed(PlanCost cost, Optional<Price> price, Optional<PlanSpent> spent) {}

  /** The cost as text. */
  public static String write(Costed now) {
    return JsonText.of(costed(JsonText.object(), now));
  }

  /** The cost as text, and another beside it with every line that is of both or of one. */
  public static String write(Costed now, Costed then, Comparison beside) {
    ObjectNode root = costed(JsonText.object(), now);
    costed(root.putObject("whatIf"), then);
    comparison(root.putObject("beside"), beside);
    return JsonText.of(root);
  }

  private static ObjectNode costed(ObjectNode root, Costed costed) {
    PlanCost cost = costed.cost();
    root.put("plan", cost.plan().name()).put("currency", cost.currency().getCode());
    line(root.putObject("cost"), cost.total());
    pieces(root.putArray("perPiece"), cost.pieces());
    ArrayNode work = root.putArray("work");
    cost.work().forEach(labour -> labour(work.addObject(), labour));
    ArrayNode buy = root.putArray("buy");
    cost.purchases().forEach(purchase -> FitNode.purchase(buy.addObject(), purchase));
    root.put("spendNow", MoneyText.print(cost.spendNow()));
    ArrayNode remnants = root.putArray("remnants");
    cost.remnants().forEach(remnant -> remnant(remnants.addObject(), remnant));
    ArrayNode uncounted = root.putArray("notCounted");
    cost.uncounted().forEach(left -> uncounted.addObject().put("what", left.what().english()).put("why", left.why().english()));
    costed.price().ifPresent(price -> price(root.putObject("price"), price));
    costed.spent().ifPresent(spent -> spent(root.putObject("soFar"), spent));
    return root;
  }

  private static void line(ObjectNode node, CostLine line) {
    node.put("line", line.key()).put("name", line.name());
    line.length().ifPresent(length -> node.put("lengthM", length.metres()));
    if (!line.basis().isEmpty()) {
      node.put("basis", line.basis());
    }
    node.put("amount", MoneyText.print(line.amount()));
    if (!line.parts().isEmpty()) {
      ArrayNode parts = node.putArray("parts");
      line.parts().forEach(part -> line(parts.addObject(), part));
    }
  }

  private static void pieces(ArrayNode array, List<PieceCost> pieces) {
    for (PieceCost piece : pieces) {
      array.addObject().put("piece", piece.name()).put("count", piece.count()).put("each", MoneyText.print(piece.each())).put("oneCoinMore", piece.dearer())
          .put("all", MoneyText.print(piece.all()));
    }
  }

  private static void labour(ObjectNode node, Labour labour) {
    node.put("work", labour.kind().key()).put("count", labour.count()).put("per", labour.kind().per().name().toLowerCase(Locale.ROOT));
    node.put("eachS", seconds(labour.unit().each().toMillis())).put("from", labour.unit().from().english()).put("timeS", seconds(labour.time().toMillis()));
    money(node, "hourly", labour.hourly());
  }

  private static BigDecimal seconds(long milliseconds) {
    return BigDecimal.valueOf(milliseconds, 3);
  }

  private static void remnant(ObjectNode node, Remnant remnant) {
    node.put("skein", remnant.skein());
    AnswerFile.yarn(node, remnant.yarn()).put("lengthM", remnant.left().metres());
    money(node, "worth", remnant.worth());
    node.put("useful", remnant.useful());
  }

  private static void price(ObjectNode node, Price price) {
    switch (price.pricing()) {
      case Pricing.Margin margin -> node.put("margin", margin.part().toString());
      case Pricing.Markup markup -> node.put("markup", markup.part().toString());
    }
    node.put("amount", MoneyText.print(price.all()));
    pieces(node.putArray("perPiece"), price.pieces());
  }

  private static void spent(ObjectNode node, PlanSpent spent) {
    node.put("total", MoneyText.print(spent.total()));
    ArrayNode places = node.putArray("places");
    spent.places().forEach((place, worth) ->
        places.addObject().put("place", place.name()).put("lengthM", worth.length().metres()).put("amount", MoneyText.print(worth.cost())));
    ArrayNode unknown = node.putArray("notCounted");
    spent.unknown().forEach(unknown::add);
  }

  private static void comparison(ObjectNode node, Comparison comparison) {
    node.put("line", comparison.key()).put("name", comparison.name());
    money(node, "now", comparison.now());
    money(node, "then", comparison.then());
    node.put("difference", MoneyText.print(comparison.difference()));
    if (!comparison.parts().isEmpty()) {
      ArrayNode parts = node.putArray("parts");
      comparison.parts().forEach(part -> comparison(parts.addObject(), part));
    }
  }

  private static void money(ObjectNode node, String key, Optional<Money> money) {
    money.ifPresentOrElse(known -> node.put(key, MoneyText.print(known)), () -> node.putNull(key));
  }
}
