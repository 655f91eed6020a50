package hankbook.exchange;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import hankbook.cost.Alternatives;
import hankbook.cost.Aspect;
import hankbook.cost.Contender;
import hankbook.cost.Figure;
import hankbook.measure.MoneyText;
import java.math.BigDecimal;
import java.math.RoundingMode;

/** Writes plans that are laid side by side as one JSON object; metres to four places. */
public final class AlternativesFile {
  private AlternativesFile() {}

  /** All of it as text. */
  public static String write(Alternatives alternatives) {
    ObjectNode root = JsonText.object();
    ArrayNode plans = root.putArray("plans");
    alternatives.contenders().forEach(plan -> plan(plans.addObject(), plan));
    ArrayNode rows = root.putArray("rows");
    alternatives.aspects().forEach(aspect -> row(rows.addObject(), aspect));
    return JsonText.of(root);
  }

  private static void plan(ObjectNode node, Contender plan) {
    ArrayNode uncounted = node.put("name", plan.name()).put("plan", plan.check().plan().name()).putArray("notCounted");
    plan.cost().uncounted().forEach(left -> uncounted.addObject().put("what", left.what().english()).put("why", left.why().english()));
  }

  private static void row(ObjectNode node, Aspect aspect) {
    node.put("row", aspect.trait().key());
    aspect.yarn().ifPresent(yarn -> AnswerFile.yarn(node, yarn));
    node.put("differs", aspect.differs());
    ArrayNode best = node.putArray("best");
    aspect.best().forEach(best::add);
    ArrayNode figures = node.putArray("figures");
    aspect.figures().forEach(figure -> figure.ifPresentOrElse(there -> figure(figures.addObject(), there), figures::addNull));
  }

  private static void figure(ObjectNode node, Figure figure) {
    switch (figure) {
      case Figure.Unknown() -> node.put("unknown", true);
      case Figure.Metres(var length) -> node.put("m", length.metres());
      case Figure.Across(var length) -> node.put("m", length.metres());
      case Figure.Count(long count) -> node.put("count", count);
      case Figure.Amount(var money) -> node.put("amount", MoneyText.print(money));
      case Figure.Time(var time) -> node.put("s", BigDecimal.valueOf(time.toMillis(), 3));
      case Figure.Stands(var verdict) -> node.put("verdict", verdict.name());
      case Figure.Chance(var risk) -> node.put("risk", BigDecimal.valueOf(risk.chance()).setScale(6, RoundingMode.HALF_UP)).put("riskWords", risk.words());
    }
  }
}
