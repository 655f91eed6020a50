package hankbook.exchange;

import java.util.HashMap;
import java.util.Map;

/**
 * The texts of one group of fields as they were typed.
 *
 * @param texts by key; a field in which nothing was typed has none
 */
public record DraftRow(Map<String, String> texts) {
  /** Nothing typed yet. */
  public static final DraftRow BLANK = new DraftRow(Map.of());

  public DraftRow {
    Map<String, String> typed = new HashMap<>(texts);
    typed.values().removeIf(String::isEmpty);
    texts = Map.copyOf(typed);
  }

  /** The text of a field; empty where nothing was typed. */
  public String text(String key) {
    return texts.getOrDefault(key, "");
  }

  /** The same row with another text in one field. */
  public DraftRow with(String key, String text) {
    Map<String, String> typed = new HashMap<>(texts);
    typed.put(key, text);
    return new DraftRow(typed);
  }
}
