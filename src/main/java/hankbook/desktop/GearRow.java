package hankbook.desktop;

import java.util.Map;
import java.util.Optional;

/**
 * A loom or a reed in the list.
 *
 * @param gear the loom or the reed
 * @param texts what the list shows, by field
 * @param learnt what finished plans say of it, in words; empty where they say nothing
 * @param asLearnt how it would be as they say; empty where it is so already
 * @param <T> which of the two
 */
record GearRow<T>(T gear, Map<String, String> texts, String learnt, Optional<AsLearnt<T>> asLearnt) {
  /**
   * How it would be as finished plans say.
   *
   * @param gear the loom or the reed
   * @param act what taking that over does, in words
   * @param <T> which of the two
   */
  record AsLearnt<T>(T gear, String act) {}

  GearRow {
    texts = Map.copyOf(texts);
  }

  /** One of which finished plans say nothing. */
  GearRow(T gear, Map<String, String> texts) {
    this(gear, texts, "", Optional.empty());
  }

  /** What the list shows of a field. */
  String text(String key) {
    return texts.getOrDefault(key, "");
  }

  String name() {
    return text("name");
  }
}
