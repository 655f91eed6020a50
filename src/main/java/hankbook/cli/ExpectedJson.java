package hankbook.cli;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import hankbook.exchange.JsonText;
import hankbook.studio.Expect;
import hankbook.studio.ExpectedSkein;
import java.time.LocalDate;
import java.util.List;

/** Yarn on order, as one JSON object each; metres to four places. */
final class ExpectedJson {
  private ExpectedJson() {}

  static String ordered(Expect.Ordered ordered) {
    return JsonText.of(JsonText.object().put("expected", ordered.expected()).put("alreadyThere", ordered.alreadyThere()));
  }

  static String changed(int changed) {
    return JsonText.of(JsonText.object().put("changed", changed));
  }

  static String list(List<ExpectedSkein> expected, LocalDate today) {
    ObjectNode root = JsonText.object();
    ArrayNode array = root.putArray("expected");
    expected.forEach(coming -> skein(array, coming).put("overdue", coming.isOverdue(today)));
    return JsonText.of(root);
  }

  static ObjectNode skein(ArrayNode array, ExpectedSkein coming) {
    return array.addObject()
        .put("skein", coming.skein().code())
        .put("yarn", coming.skein().yarn().yarn())
        .put("colour", coming.skein().yarn().colour())
        .put("lengthM", coming.length().metres())
        .put("due", coming.due().toString());
  }
}
