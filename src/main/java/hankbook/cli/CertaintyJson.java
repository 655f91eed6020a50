package hankbook.cli;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import hankbook.allot.Judgement;
import hankbook.allot.Setting;
import hankbook.exchange.JsonText;
import hankbook.measure.Exact;
import hankbook.studio.YarnGrist;
import hankbook.yarn.GristSample;
import hankbook.yarn.Skein;
import java.math.RoundingMode;
import java.util.List;

/** How surely things are known, as one JSON object each. */
final class CertaintyJson {
  private CertaintyJson() {}

  static String settings(Judgement judgement) {
    ObjectNode root = JsonText.object();
    ArrayNode array = root.putArray("settings");
    for (Setting setting : Setting.values()) {
      array.addObject().put("key", setting.key()).put("value", judgement.text(setting)).put("default", setting.standard()).put("text", setting.words());
    }
    return JsonText.of(root);
  }

  static String grists(List<YarnGrist> grists) {
    ObjectNode root = JsonText.object();
    ArrayNode array = root.putArray("grists");
    for (YarnGrist grist : grists) {
      ObjectNode node = array.addObject().put("yarn", grist.yarn());
      ArrayNode numbers = node.putArray("yarnNumbers");
      grist.numbers().forEach(number -> numbers.add(number.toString()));
      grist.sample().ifPresentOrElse(sample -> sample(node.putObject("sample"), sample), () -> node.putNull("sample"));
      ArrayNode recount = node.putArray("recount");
      grist.toRecount().stream().map(Skein::code).forEach(recount::add);
      ArrayNode unmeasured = node.putArray("unmeasured");
      grist.unmeasured().forEach(skein -> unmeasured.addObject().put("skein", skein.code()).put("lengthM", skein.holds().metres()));
    }
    return JsonText.of(root);
  }

  private static void sample(ObjectNode node, GristSample sample) {
    node.put("lengthM", sample.length().metres()).put("massG", sample.mass().grams());
    node.put("divisionG", sample.division().grams()).put("withinM", sample.within().metres());
    node.put("tex", Exact.decimal(sample.grist().tex(), 3, RoundingMode.HALF_UP));
    node.put("uncertainty", Exact.decimal(sample.uncertainty().fraction(), 6, RoundingMode.HALF_UP));
  }
}
