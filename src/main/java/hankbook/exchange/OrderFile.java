package hankbook.exchange;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import hankbook.plan.PlanChange;
import hankbook.plan.SectionSum;
import hankbook.plan.Succession;
import hankbook.yarn.YarnColour;
import java.util.Map;
import java.util.Optional;

/** Writes orders and sections as JSON; metres to four places. */
public final class OrderFile {
  private OrderFile() {}

  /** A written order with its counts, as one object. */
  public static String write(Succession order) {
    return JsonText.of(order(JsonText.object(), order, order.counts(), Map.of(), "count"));
  }

  /** The sums of a plan's sections, and what a change of one would do, as one object. */
  public static String write(String plan, SectionSum sum, Optional<PlanChange> change) {
    ObjectNode root = sum(JsonText.object().put("plan", plan), sum);
    change.ifPresent(by -> change(root.putObject("change"), by));
    return JsonText.of(root);
  }

  /**
   * Puts a written order into an object.
   *
   * @param counts how many threads each mark has in all
   * @param yarns the yarn of each mark, where they are known
   * @param unit the key of a count
   */
  static ObjectNode order(ObjectNode node, Succession order, Map<String, Long> counts, Map<String, YarnColour> yarns, String unit) {
    node.put("text", order.toString()).put("words", order.words()).put("threads", order.threads());
    ArrayNode marks = node.putArray("marks");
    for (String mark : order.marks()) {
      ObjectNode counted = marks.addObject().put("mark", mark);
      YarnColour yarn = yarns.get(mark);
      if (yarn != null) {
        counted.put("yarn", yarn.yarn()).put("colour", yarn.colour());
      }
      counted.put(unit, counts.getOrDefault(mark, 0L));
    }
    return node;
  }

  static ObjectNode sum(ObjectNode node, SectionSum sum) {
    ArrayNode rows = node.putArray("sections");
    for (SectionSum.Row row : sum.rows()) {
      rows.addObject().put("name", row.name()).put("repeats", row.repeats()).put("units", row.units()).put("ends", row.ends())
          .put("firstEnd", row.first()).put("lastEnd", row.last()).put("fromM", row.from().metres()).put("widthM", row.width().metres());
    }
    node.put("arithmetic", sum.arithmetic()).put("units", sum.units()).put("endsPerUnit", sum.endsPerUnit());
    node.put("endsBySection", sum.endsByStretch()).put("endsByUnits", sum.endsByUnits()).put("selvedgeEnds", sum.selvedgeEnds());
    return node.put("ends", sum.ends()).put("widthM", sum.width().metres());
  }

  private static void change(ObjectNode node, PlanChange change) {
    node.put("ends", change.ends()).put("widthInReedM", change.inReed().metres()).put("finishedWidthM", change.finished().metres()).put("inProportion", change.inProportion());
    ArrayNode yarns = node.putArray("yarns");
    change.yarn().forEach((yarn, more) -> yarns.addObject().put("yarn", yarn.yarn()).put("colour", yarn.colour()).put("moreM", more.metres()));
  }
}
