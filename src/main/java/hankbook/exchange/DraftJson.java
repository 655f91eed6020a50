package hankbook.exchange;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.SerializationFeature;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** Writes drafts as plan files and reads them back, every text unread. */
final class DraftJson {
  private static final JsonMapper MAPPER =
      JsonMapper.builder()
          .enable(SerializationFeature.INDENT_OUTPUT)
          .enable(DeserializationFeature.USE_BIG_DECIMAL_FOR_FLOATS, DeserializationFeature.USE_BIG_INTEGER_FOR_INTS)
          .build();

  private DraftJson() {}

  static String write(PlanDraft draft) {
    ObjectNode root = MAPPER.createObjectNode().put("format", PlanFile.FORMAT);
    for (PlanPart part : PlanPart.values()) {
      write(draft, part, root);
    }
    try {
      return MAPPER.writeValueAsString(root);
    } catch (JsonProcessingException impossible) {
      throw new IllegalStateException(impossible);
    }
  }

  private static void write(PlanDraft draft, PlanPart part, ObjectNode root) {
    if (part.isList()) {
      if (!draft.rows(part).isEmpty()) {
        ArrayNode list = holder(root, part).putArray(part.key());
        draft.rows(part).forEach(row -> write(row, part, list.addObject()));
      }
      return;
    }
    DraftRow only = draft.rows(part).get(0);
    if (!only.texts().isEmpty()) {
      write(only, part, part == PlanPart.PLAN ? root : holder(root, part).putObject(part.key()));
    }
  }

  private static void write(DraftRow row, PlanPart part, ObjectNode node) {
    for (String key : part.keys()) {
      if (!row.text(key).isEmpty()) {
        node.put(key, row.text(key));
      }
    }
  }

  /** The object that a part stands in: the warp for its order, sections and selvedge, else the plan. */
  private static ObjectNode holder(ObjectNode root, PlanPart part) {
    return part.path().startsWith("warp.") ? root.withObjectProperty("warp") : root;
  }

  static PlanDraft read(String json) {
    try {
      JsonNode root = MAPPER.readTree(json);
      Map<PlanPart, List<DraftRow>> rows = new EnumMap<>(PlanPart.class);
      for (PlanPart part : PlanPart.values()) {
        rows.put(part, part.isList() ? list(part, at(root, part)) : List.of(row(part, at(root, part))));
      }
      return new PlanDraft(rows);
    } catch (JsonProcessingException noJson) {
      return PlanDraft.BLANK;
    }
  }

  private static JsonNode at(JsonNode root, PlanPart part) {
    return part == PlanPart.PLAN ? root : root.at("/" + part.path().replace('.', '/'));
  }

  private static List<DraftRow> list(PlanPart part, JsonNode list) {
    List<DraftRow> rows = new ArrayList<>();
    if (list.isArray()) {
      list.forEach(node -> rows.add(row(part, node)));
    }
    return rows;
  }

  private static DraftRow row(PlanPart part, JsonNode node) {
    Map<String, String> texts = new HashMap<>();
    for (String key : part.keys()) {
      texts.put(key, text(node.path(key)));
    }
    return new DraftRow(texts);
  }

  static String text(JsonNode node) {
    if (node.isNumber()) {
      BigDecimal number = node.decimalValue();
      return Math.abs(number.scale()) > JsonFields.MOST_DIGITS ? number.toString() : number.toPlainString();
    }
    return node.isNull() ? "" : node.asText("");
  }
}
