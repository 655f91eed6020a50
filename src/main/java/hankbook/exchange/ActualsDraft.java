package hankbook.exchange;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * What was found after a cloth while it is being entered: everything an actuals file can say, as the texts that were typed, whether or not they can be
 * read. {@link ActualsFile} alone says what they mean.
 *
 * @param rows the rows of every part; a part that is no list has exactly one
 */
public record ActualsDraft(Map<ActualsPart, List<DraftRow>> rows) {
  /** Nothing typed yet. */
  public static final ActualsDraft BLANK = new ActualsDraft(Map.of());

  private static final JsonMapper MAPPER =
      JsonMapper.builder().enable(DeserializationFeature.USE_BIG_DECIMAL_FOR_FLOATS, DeserializationFeature.USE_BIG_INTEGER_FOR_INTS).build();

  public ActualsDraft {
    Map<ActualsPart, List<DraftRow>> all = new EnumMap<>(ActualsPart.class);
    for (ActualsPart part : ActualsPart.values()) {
      List<DraftRow> given = List.copyOf(rows.getOrDefault(part, part.isList() ? List.of() : List.of(DraftRow.BLANK)));
      if (!part.isList() && given.size() != 1) {
        throw new IllegalArgumentException(part + " has " + given.size() + " rows, wanted exactly one");
      }
      all.put(part, given);
    }
    rows = Collections.unmodifiableMap(all);
  }

  /** Reads an actuals file leniently: what is no field of one is passed over, what is no such file at all gives a blank draft. */
  public static ActualsDraft of(String json) {
    try {
      JsonNode root = MAPPER.readTree(json);
      Map<ActualsPart, List<DraftRow>> rows = new EnumMap<>(ActualsPart.class);
      for (ActualsPart part : ActualsPart.values()) {
        JsonNode node = part.key().isEmpty() ? root : root.path(part.key());
        rows.put(part, part.isList() ? list(part, node) : List.of(row(part, node)));
      }
      return new ActualsDraft(rows);
    } catch (JsonProcessingException noJson) {
      return BLANK;
    }
  }

  private static List<DraftRow> list(ActualsPart part, JsonNode list) {
    List<DraftRow> rows = new ArrayList<>();
    if (list.isArray()) {
      list.forEach(node -> rows.add(row(part, node)));
    }
    return rows;
  }

  private static DraftRow row(ActualsPart part, JsonNode node) {
    Map<String, String> texts = new HashMap<>();
    part.keys().forEach(key -> texts.put(key, DraftJson.text(node.path(key))));
    return new DraftRow(texts);
  }

  /** An actuals file with every typed text in it as it stands. */
  public String json() {
    return json(false);
  }

  /** An actuals file to be filled in: what was not typed yet is there as a blank text, which counts as nothing said. */
  public String form() {
    return json(true);
  }

  private String json(boolean withBlanks) {
    ObjectNode root = JsonText.object().put("format", ActualsFile.FORMAT);
    for (ActualsPart part : ActualsPart.values()) {
      List<DraftRow> given = rows(part);
      if (part.isList() && !given.isEmpty()) {
        ArrayNode list = root.putArray(part.key());
        given.forEach(row -> write(row, part, list.addObject(), withBlanks));
      } else if (!part.isList() && (withBlanks || !given.getFirst().texts().isEmpty())) {
        write(given.getFirst(), part, part.key().isEmpty() ? root : root.putObject(part.key()), withBlanks);
      }
    }
    return JsonText.of(root);
  }

  private static void write(DraftRow row, ActualsPart part, ObjectNode node, boolean withBlanks) {
    for (String key : part.keys()) {
      if (withBlanks || !row.text(key).isEmpty()) {
        node.put(key, row.text(key));
      }
    }
  }

  /** The rows of a part. */
  public List<DraftRow> rows(ActualsPart part) {
    return rows.getOrDefault(part, List.of());
  }

  /** The text in a field of a row, counted from 1; empty where nothing was typed. */
  public String text(ActualsPart part, int row, String key) {
    return rows(part).get(row - 1).text(key);
  }

  /** The same draft with another text in one field. */
  public ActualsDraft with(ActualsPart part, int row, String key, String text) {
    List<DraftRow> changed = new ArrayList<>(rows(part));
    changed.set(row - 1, changed.get(row - 1).with(key, text));
    return with(part, changed);
  }

  /** The same draft with other rows in one part. */
  public ActualsDraft with(ActualsPart part, List<DraftRow> changed) {
    Map<ActualsPart, List<DraftRow>> all = new EnumMap<>(rows);
    all.put(part, changed);
    return new ActualsDraft(all);
  }
}
