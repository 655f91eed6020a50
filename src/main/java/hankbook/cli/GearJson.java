package hankbook.cli;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import hankbook.exchange.JsonText;
import hankbook.gear.Loom;
import hankbook.gear.Reed;
import hankbook.gear.SettAdvice;
import hankbook.gear.SleyChoice;
import hankbook.gear.Sleying;
import hankbook.measure.Exact;
import hankbook.measure.Length;
import hankbook.plan.SettChange;
import hankbook.reckon.Findings;
import hankbook.studio.Learnt;
import hankbook.studio.SleyPlan;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import org.apache.commons.numbers.fraction.BigFraction;

/** Looms, reeds, setts and sleying, as one JSON object each; metres to four places. */
final class GearJson {
  private GearJson() {}

  static String looms(List<Loom> looms, Findings learnt) {
    ObjectNode root = JsonText.object();
    ArrayNode array = root.putArray("looms");
    for (Loom loom : looms) {
      ObjectNode node = array.addObject().put("loom", loom.name()).put("widthM", loom.width().metres()).put("wasteM", loom.waste().metres()).put("shafts", loom.shafts());
      Learnt.waste(learnt, loom.name()).ifPresent(finding -> node.put("learntWasteM", Length.ofTenths(finding.mean(), RoundingMode.HALF_UP).metres()).put("learntPlans", finding.count()));
    }
    return JsonText.of(root);
  }

  static String reeds(List<Reed> reeds) {
    ObjectNode root = JsonText.object();
    ArrayNode array = root.putArray("reeds");
    for (Reed reed : reeds) {
      ObjectNode node = array.addObject().put("reed", reed.name()).put("dents", reed.dents().toString());
      reed.width().map(Length::metres).ifPresentOrElse(width -> node.put("widthM", width), () -> node.putNull("widthM"));
    }
    return JsonText.of(root);
  }

  static String putAway(String what, String name) {
    return JsonText.of(JsonText.object().put(what, name));
  }

  static String advice(SettAdvice advice, List<SleyChoice> choices) {
    ObjectNode root = JsonText.object().put("diametersPerInch", places(advice.diameters().perInch(), 4)).put("k", places(advice.diameters().factor(), 4));
    root.put("weave", advice.weave().name()).put("ends", advice.weave().ends()).put("intersections", advice.weave().intersections());
    root.put("fullest", advice.fullest(SettReport.INCH).toString()).put("working", advice.working(SettReport.INCH).toString());
    root.put("fullestMetric", advice.fullest(SettReport.CENTIMETRE).toString()).put("workingMetric", advice.working(SettReport.CENTIMETRE).toString());
    root.put("part", places(advice.part(), 4));
    choices(root.putArray("sleyings"), choices);
    return JsonText.of(root);
  }

  static String sleyed(SleyPlan.Sleyed sleyed) {
    Sleying sleying = sleyed.sleying();
    ObjectNode root = JsonText.object().put("plan", sleyed.plan()).put("wanted", sleyed.choice().wanted().toString());
    choice(root, sleyed.choice());
    root.put("ends", sleying.ends()).put("dents", sleying.dents()).put("repeats", sleying.repeats()).put("leftOverEnds", sleying.leftOver());
    root.put("widthInReedM", sleying.width().metres()).put("plannedWidthInReedM", sleyed.planned().metres()).put("fromMiddleM", sleying.fromMiddle().metres());
    sleying.freeBefore().ifPresentOrElse(free -> root.put("firstDent", free + 1), () -> root.putNull("firstDent"));
    choices(root.putArray("sleyings"), sleyed.choices());
    return JsonText.of(root);
  }

  static String resleyed(String plan, SettChange change, boolean kept) {
    ObjectNode root = JsonText.object().put("plan", plan).put("ends", change.ends()).put("kept", kept);
    state(root.putObject("before"), change.before());
    state(root.putObject("after"), change.after());
    ArrayNode wefts = root.putArray("weft");
    for (SettChange.WeftChange weft : change.wefts()) {
      ObjectNode node = wefts.addObject().put("yarn", weft.yarn().yarn()).put("colour", weft.yarn().colour());
      node.put("beforeM", weft.before().metres()).put("afterM", weft.after().metres()).put("moreM", weft.more().metres());
    }
    return JsonText.of(root);
  }

  private static void state(ObjectNode node, SettChange.State state) {
    node.put("sett", state.sett().toString()).put("widthInReedM", state.inReed().metres()).put("finishedWidthM", state.finished().metres());
  }

  private static void choices(ArrayNode array, List<SleyChoice> choices) {
    choices.forEach(choice -> choice(array.addObject(), choice));
  }

  private static void choice(ObjectNode node, SleyChoice choice) {
    node.put("reed", choice.reed().name()).put("sley", choice.sley().toString()).put("sett", choice.sett().toString()).put("off", places(choice.off(), 6));
  }

  private static BigDecimal places(BigFraction exact, int places) {
    return Exact.decimal(exact, places, RoundingMode.HALF_UP);
  }
}
