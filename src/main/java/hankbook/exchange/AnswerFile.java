package hankbook.exchange;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import hankbook.allot.Cover;
import hankbook.allot.Fit;
import hankbook.allot.PlanCheck;
import hankbook.allot.Share;
import hankbook.allot.Warning;
import hankbook.measure.Length;
import hankbook.plan.Need;
import hankbook.yarn.Skein;
import hankbook.yarn.YarnColour;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/** Writes the answer of a check as one JSON object; metres to four places. */
public final class AnswerFile {
  private AnswerFile() {}

  /**
   * The answer of a check as text.
   *
   * @param due when each skein is expected that was counted though it has not come, by its code
   */
  public static String write(PlanCheck check, List<Skein> stock, Map<String, LocalDate> due) {
    ObjectNode root = answer(check, stock);
    counted(root, due);
    return JsonText.of(root);
  }

  /**
   * The answer of a check with what fits, as text.
   *
   * @param due when each skein is expected that was counted though it has not come, by its code
   */
  public static String write(PlanCheck check, Fit fit, List<Skein> stock, Map<String, LocalDate> due) {
    ObjectNode root = answer(check, stock);
    FitNode.write(root.putObject("fit"), check.plan(), fit);
    counted(root, due);
    return JsonText.of(root);
  }

  /** Says which yarn on order was counted, where any was. */
  static void counted(ObjectNode root, Map<String, LocalDate> due) {
    if (!due.isEmpty()) {
      ArrayNode counted = root.putArray("counted");
      due.forEach((skein, day) -> counted.addObject().put("skein", skein).put("due", day.toString()));
    }
  }

  private static ObjectNode answer(PlanCheck check, List<Skein> stock) {
    ObjectNode root = JsonText.object().put("plan", check.plan().name());
    ObjectNode warp = root.putObject("warp").put("ends", check.yardage().width().ends());
    warp.put("widthInReedM", check.yardage().width().inReed().metres()).put("lengthM", check.yardage().warp().total().metres());
    ArrayNode parts = warp.putArray("parts");
    check.yardage().warp().parts().forEach((part, length) -> parts.addObject().put("part", part.key()).put("lengthM", length.metres()));
    PlanOrder.put(root, warp, check.plan());
    ArrayNode needs = root.putArray("needs");
    check.yardage().needs().forEach(need -> need(needs.addObject(), need, stock));
    ArrayNode covers = root.putArray("cover");
    check.covers().forEach(cover -> cover(covers.addObject(), cover));
    ArrayNode shares = root.putArray("allotment");
    check.shares().forEach(share -> share(shares, share));
    ArrayNode warnings = root.putArray("warnings");
    for (Warning warning : check.warnings()) {
      ObjectNode node = warnings.addObject().put("code", warning.code().name());
      warning.yarn().ifPresentOrElse(yarn -> yarn(node, yarn), () -> node.put("yarn", "").put("colour", ""));
      node.put("text", warning.text());
    }
    return root;
  }

  private static void need(ObjectNode node, Need need, List<Skein> stock) {
    Length length = need.length();
    yarn(node, need.yarn()).put("role", need.role().name().toLowerCase(Locale.ROOT)).put("lengthM", length.metres());
    stock.stream()
        .filter(skein -> skein.yarn().equals(need.yarn()))
        .flatMap(skein -> skein.knownGrist().stream())
        .findFirst()
        .ifPresentOrElse(grist -> node.put("massG", grist.massOf(length, RoundingMode.HALF_UP).grams()), () -> node.putNull("massG"));
  }

  private static void cover(ObjectNode node, Cover cover) {
    yarn(node, cover.yarn())
        .put("needM", cover.need().metres())
        .put("freeM", cover.free().metres())
        .put("marginM", cover.margin().metres())
        .put("uncertaintyM", cover.uncertainty().metres())
        .put("risk", BigDecimal.valueOf(cover.chance().chance()).setScale(6, RoundingMode.HALF_UP))
        .put("riskWords", cover.chance().words())
        .put("verdict", cover.verdict().name());
    ArrayNode parts = node.putArray("uncertaintyParts");
    cover.doubt().parts().forEach(part -> parts.addObject().put("cause", part.cause().english()).put("skeins", part.skeins()).put("uncertaintyM", part.error().metres()));
  }

  private static void share(ArrayNode shares, Share share) {
    if (share.ends() > 0) {
      shares.addObject().put("skein", share.code()).put("role", "warp").put("ends", share.ends()).put("lengthM", share.warp().metres());
    }
    if (share.weft().isPositive()) {
      shares.addObject().put("skein", share.code()).put("role", "weft").put("ends", 0).put("lengthM", share.weft().metres());
    }
  }

  static ObjectNode yarn(ObjectNode node, YarnColour yarn) {
    return node.put("yarn", yarn.yarn()).put("colour", yarn.colour());
  }
}
