package hankbook.desktop;

import hankbook.desktop.say.Say;
import hankbook.measure.Unreadable;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;

/** Reads what is typed of a loom or a reed field by field, and gathers what is wrong with each and what is still wanted. */
final class GearReading {
  private final Map<String, String> texts;
  private final Map<String, String> messages = new LinkedHashMap<>();
  private final List<String> missing = new ArrayList<>();

  /** @param texts what is typed, by field */
  GearReading(Map<String, String> texts) {
    this.texts = texts;
  }

  /** A field that must be there; empty where it is not, or cannot be read. */
  <T> Optional<T> wanted(String key, Function<String, T> reader) {
    if (text(key).isEmpty()) {
      missing.add(Say.known(key));
      return Optional.empty();
    }
    return read(key, reader);
  }

  /** A field that may stay empty; empty as well where it cannot be read. */
  <T> Optional<T> perhaps(String key, Function<String, T> reader) {
    return text(key).isEmpty() ? Optional.empty() : read(key, reader);
  }

  private <T> Optional<T> read(String key, Function<String, T> reader) {
    try {
      return Optional.of(reader.apply(text(key)));
    } catch (Unreadable unreadable) {
      messages.put(key, Wording.wanted(unreadable));
      return Optional.empty();
    }
  }

  private String text(String key) {
    return texts.getOrDefault(key, "").strip();
  }

  /** What is wrong with a field, or empty. */
  String message(String key) {
    return messages.getOrDefault(key, "");
  }

  /** Why it cannot be entered, or empty. */
  String whyNot() {
    if (!messages.isEmpty()) {
      return Say.text("Mend the fields marked above.");
    }
    return missing.isEmpty() ? "" : Say.text("Still wanted: {0}.", String.join(", ", missing));
  }
}
