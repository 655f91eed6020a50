package hankbook.cli;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import hankbook.exchange.JsonText;
import hankbook.measure.Exact;
import hankbook.measure.Length;
import hankbook.plan.Allowances;
import hankbook.reckon.Cause;
import hankbook.reckon.Found;
import hankbook.reckon.Realised;
import hankbook.reckon.Reckoning;
import hankbook.reckon.YarnAccount;
import hankbook.studio.YarnWent;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Function;
import org.apache.commons.numbers.fraction.BigFraction;

/** Where the yarn of a plan went, as one JSON object. */
final class UsedJson {
  private UsedJson() {}

  static String of(YarnWent.Went went) {
    Reckoning reckoning = went.reckoning();
    ObjectNode root = JsonText.object().put("plan", went.finished().plan()).put("as", went.against().name().toLowerCase(Locale.ROOT)).put("edited", went.isEdited());
    ArrayNode yarns = root.putArray("yarns");
    reckoning.yarns().forEach(yarn -> yarn(yarns.addObject(), yarn));
    ObjectNode total = root.putObject("total").put("plannedM", reckoning.planned().metres()).put("usedM", reckoning.used().metres());
    causes(total.putArray("causes"), reckoning::part);
    really(root.putObject("really"), reckoning.really(), went.made().plan().allowances());
    return JsonText.of(root);
  }

  private static void yarn(ObjectNode node, YarnAccount yarn) {
    node.put("yarn", yarn.yarn().yarn()).put("colour", yarn.yarn().colour()).put("plannedM", yarn.planned().metres()).put("usedM", yarn.used().metres());
    node.put("uncertaintyM", yarn.uncertainty().metres());
    ArrayNode purposes = node.putArray("purposes");
    yarn.purposes().forEach((purpose, length) -> purposes.addObject().put("purpose", purpose.key()).put("lengthM", length.metres()));
    causes(node.putArray("causes"), yarn::part);
  }

  private static void causes(ArrayNode array, Function<Cause, Length> part) {
    for (Cause cause : Cause.values()) {
      array.addObject().put("cause", cause.key()).put("lengthM", part.apply(cause).metres());
    }
  }

  private static void really(ObjectNode node, Realised really, Allowances allowances) {
    ArrayNode ways = node.putArray("allowances");
    really.ways().forEach((way, found) -> ways.addObject()
        .put("allowance", way.key()).put("planned", part(way.planned(allowances))).put("found", part(found.value())).put("from", found.from().english()));
    length(node, "sampling", allowances.sampling(), really.sampling());
    length(node, "loomWaste", allowances.loomWaste(), really.loomWaste());
    ArrayNode times = node.putArray("times");
    really.times().forEach((kind, found) -> times.addObject()
        .put("work", kind.key()).put("per", kind.per().name().toLowerCase(Locale.ROOT)).put("seconds", BigDecimal.valueOf(found.value().toMillis(), 3)).put("from", found.from().english()));
    ArrayNode unlikely = node.putArray("unlikely");
    really.unlikely().forEach(never -> unlikely.add(never.words()));
  }

  private static void length(ObjectNode node, String key, Length planned, Optional<Found<Length>> found) {
    found.ifPresentOrElse(
        length -> node.putObject(key).put("plannedM", planned.metres()).put("foundM", length.value().metres()).put("from", length.from().english()), () -> node.putNull(key));
  }

  private static BigDecimal part(BigFraction part) {
    return Exact.decimal(part, 6, RoundingMode.HALF_UP);
  }
}
