package hankbook.exchange;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.StreamReadFeature;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import hankbook.measure.Unreadable;
import java.util.function.Function;

/** Reads a file that holds one JSON object; a key that stands twice and anything after the object are refused. */
final class JsonFile {
  private static final JsonMapper MAPPER =
      JsonMapper.builder()
          .enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION)
          .enable(DeserializationFeature.USE_BIG_DECIMAL_FOR_FLOATS, DeserializationFeature.FAIL_ON_TRAILING_TOKENS)
          .build();

  private JsonFile() {}

  /**
   * Reads its text.
   *
   * @param file its name, for messages
   * @param wanted what it should hold, as a noun phrase
   * @throws BadInput naming the file, the line or field, what was found and what is wanted
   */
  static <T> T read(String file, String text, String wanted, Function<JsonNode, T> reader) throws BadInput {
    try {
      return reader.apply(MAPPER.readTree(text));
    } catch (JsonProcessingException broken) {
      int line = broken.getLocation() == null ? 1 : broken.getLocation().getLineNr();
      throw new BadInput(file + ", line " + line + ": found no JSON (" + broken.getOriginalMessage().lines().findFirst().orElse("") + "), wanted " + wanted);
    } catch (JsonFields.Refused refused) {
      throw new BadInput(file + ", " + refused.getMessage(), refused.fault());
    }
  }

  /** @throws Unreadable if a file's {@code format} is another than the one wanted */
  static String format(String found, String wanted) {
    if (!found.equals(wanted)) {
      throw new Unreadable(found, wanted);
    }
    return found;
  }
}
