package hankbook.desktop.say;

import com.fasterxml.jackson.core.StreamReadFeature;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.HashMap;
import java.util.Map;
import java.util.Objects;
import java.util.Set;

/**
 * The texts of one language by their English texts, from a JSON object: a text, or where things are counted an array of two texts, for one thing and for any other
 * number. English, German and Swedish all have these two forms (Unicode CLDR, Language Plural Rules: one and other for whole numbers).
 */
final class Catalogue {
  private static final JsonMapper JSON = JsonMapper.builder().enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION).build();

  /** English has its texts in the code. */
  static final Catalogue ENGLISH = new Catalogue(Map.of(), Map.of());

  private final Map<String, String> texts;
  private final Map<String, Forms> counted;

  /** For one, and for any other number. */
  record Forms(String one, String many) {}

  private Catalogue(Map<String, String> texts, Map<String, Forms> counted) {
    this.texts = Map.copyOf(texts);
    this.counted = Map.copyOf(counted);
  }

  /**
   * The texts of a language.
   *
   * @throws IllegalStateException if its file is not part of the program or is no such object
   */
  static Catalogue of(Language language) {
    if (language == Language.ENGLISH) {
      return ENGLISH;
    }
    String name = language.code() + ".json";
    try (InputStream file = Objects.requireNonNull(Catalogue.class.getResourceAsStream(name), () -> "the texts " + name + " are missing from the program")) {
      return read(JSON.readTree(file));
    } catch (IOException unread) {
      throw new UncheckedIOException("the texts " + name + " cannot be read", unread);
    }
  }

  private static Catalogue read(JsonNode all) {
    Map<String, String> texts = new HashMap<>();
    Map<String, Forms> counted = new HashMap<>();
    all.properties().forEach(text -> {
      JsonNode said = text.getValue();
      if (said.isArray() && said.size() == 2) {
        counted.put(text.getKey(), new Forms(said.path(0).asText(), said.path(1).asText()));
      } else if (said.isTextual()) {
        texts.put(text.getKey(), said.asText());
      } else {
        throw new IllegalStateException("\"" + text.getKey() + "\" is " + said + ", wanted a text or an array of two");
      }
    });
    return new Catalogue(texts, counted);
  }

  /** The text for an English one; itself where there is none. */
  String text(String english) {
    return texts.getOrDefault(english, english);
  }

  /** The two forms for two English ones; themselves where there are none. */
  Forms counted(String one, String many) {
    return counted.getOrDefault(many, new Forms(one, many));
  }

  /** Every English text that it has a text for. */
  Set<String> texts() {
    return texts.keySet();
  }

  /** Every English text for many that it has two forms for. */
  Set<String> counted() {
    return counted.keySet();
  }
}
