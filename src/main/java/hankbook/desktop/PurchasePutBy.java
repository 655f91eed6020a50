package hankbook.desktop;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** A purchase that is being typed as single texts, and back. */
final class PurchasePutBy {
  private PurchasePutBy() {}

  /** What is typed, by the names of the fields; lines are numbered from 1. */
  static Map<String, String> texts(PurchaseTyped typed) {
    Map<String, String> texts = new LinkedHashMap<>(typed.head());
    for (int i = 0; i < typed.lines().size(); i++) {
      PurchaseTyped.Line line = typed.lines().get(i);
      texts.put(key(i, "words"), line.words());
      texts.put(key(i, "price"), line.price());
      texts.put(key(i, "skeins"), String.join("\n", line.skeins()));
    }
    texts.values().removeIf(String::isEmpty);
    return texts;
  }

  /** The same as it was typed; at least one line. */
  static PurchaseTyped of(Map<String, String> texts) {
    List<PurchaseTyped.Line> lines = new ArrayList<>();
    int lastLine = texts.keySet().stream().filter(key -> key.startsWith("line ")).mapToInt(key -> Integer.parseInt(key.split(" ", -1)[1])).max().orElse(1);
    for (int i = 0; i < lastLine; i++) {
      List<String> skeins = texts.getOrDefault(key(i, "skeins"), "").lines().toList();
      lines.add(new PurchaseTyped.Line(texts.getOrDefault(key(i, "words"), ""), texts.getOrDefault(key(i, "price"), ""), skeins));
    }
    return new PurchaseTyped(texts, lines);
  }

  private static String key(int line, String field) {
    return "line " + (line + 1) + " " + field;
  }
}
