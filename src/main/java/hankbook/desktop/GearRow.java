package hankbook.desktop;

import java.util.Map;

/**
 * A loom or a reed in the list.
 *
 * @param gear the loom or the reed
 * @param texts what the list shows, by field
 * @param <T> which of the two
 */
record GearRow<T>(T gear, Map<String, String> texts) {
  GearRow {
    texts = Map.copyOf(texts);
  }

  /** What the list shows of a field. */
  String text(String key) {
    return texts.getOrDefault(key, "");
  }

  String name() {
    return text("name");
  }
}
