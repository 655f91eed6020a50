package hankbook.desktop;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.Optional;

/**
 * What the window remembers from one start to the next: values by their keys, where what cannot be read counts as never said. Keys that nobody asks for stay, so
 * that an older program loses nothing of a newer one's. Not for use by two threads.
 */
public final class Remembered {
  private static final ObjectMapper JSON =
      JsonMapper.builder()
          .enable(DeserializationFeature.FAIL_ON_TRAILING_TOKENS, DeserializationFeature.FAIL_ON_NULL_FOR_PRIMITIVES)
          .enable(DeserializationFeature.FAIL_ON_MISSING_CREATOR_PROPERTIES, DeserializationFeature.FAIL_ON_NULL_CREATOR_PROPERTIES)
          .disable(DeserializationFeature.FAIL_ON_UNKNOWN_PROPERTIES)
          .build();

  private final ObjectNode all;
  private Runnable changed = () -> {};

  private Remembered(ObjectNode all) {
    this.all = all;
  }

  /** A window without a past. */
  public static Remembered nothing() {
    return new Remembered(JsonNodeFactory.instance.objectNode());
  }

  /** Reads what {@link #json} wrote; empty if the text is broken. */
  static Optional<Remembered> of(String json) {
    try {
      return JSON.readTree(json) instanceof ObjectNode all ? Optional.of(new Remembered(all)) : Optional.empty();
    } catch (JsonProcessingException _) {
      return Optional.empty();
    }
  }

  /** Is run after each change. */
  void whenChanged(Runnable told) {
    changed = told;
  }

  /** What stands under a key; empty if nothing does, or something that is no such value. */
  <T> Optional<T> get(String key, Class<T> kind) {
    JsonNode found = all.path(key);
    try {
      return found.isMissingNode() ? Optional.empty() : Optional.ofNullable(JSON.treeToValue(found, kind));
    } catch (JsonProcessingException | IllegalArgumentException _) {
      return Optional.empty();
    }
  }

  /** Remembers a value. Members of what stood there before which it does not name are kept. */
  void put(String key, Object value) {
    JsonNode before = all.path(key);
    JsonNode after = JSON.valueToTree(value);
    if (before instanceof ObjectNode members && after instanceof ObjectNode newer) {
      after = members.deepCopy().setAll(newer);
    }
    if (!after.equals(before)) {
      all.set(key, after);
      changed.run();
    }
  }

  /** All of it, as a text that can be read and mended by hand. */
  String json() {
    return all.toPrettyString() + "\n";
  }
}
