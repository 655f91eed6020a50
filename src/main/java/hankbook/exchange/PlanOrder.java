package hankbook.exchange;

import com.fasterxml.jackson.databind.node.ObjectNode;
import hankbook.plan.Band;
import hankbook.plan.ClothPattern;
import hankbook.plan.Plan;
import hankbook.plan.SectionSum;
import hankbook.plan.Succession;
import hankbook.plan.Warp;
import hankbook.yarn.YarnColour;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;

/** Puts what a plan writes of its order and sections into its answer; a plan that writes none of it gets no such keys. */
final class PlanOrder {
  private PlanOrder() {}

  static void put(ObjectNode root, ObjectNode warpNode, Plan plan) {
    Warp warp = plan.warp();
    warp.succession().ifPresent(written -> {
      Map<String, YarnColour> yarns = new LinkedHashMap<>();
      warp.order().forEach(entry -> yarns.put(entry.mark(), entry.yarn()));
      OrderFile.order(warpNode.putObject("order"), written, written.counts(), yarns, "ends");
    });
    warp.sections().ifPresent(sections -> OrderFile.sum(warpNode.putObject("sections"), SectionSum.of(sections, warp.sett(), warp.selvedgeEnds())));
    plan.weftSuccession().ifPresent(written -> weft(root.putObject("weft"), written, plan));
  }

  private static void weft(ObjectNode node, Succession written, Plan plan) {
    Optional<Band> picks = ClothPattern.of(plan).weft();
    Map<String, YarnColour> yarns = new LinkedHashMap<>();
    plan.wefts().stream().filter(weft -> written.marks().contains(weft.mark())).forEach(weft -> yarns.put(weft.mark(), weft.yarn()));
    OrderFile.order(node.putObject("order"), written, written.countsOver(picks.map(Band::count).orElse(0L)), yarns, "picks");
  }
}
