package hankbook.desktop;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import javafx.scene.Node;
import javafx.scene.Parent;
import javafx.scene.control.TextInputControl;

/** What is typed in the window and stands in no ledger yet, so that it outlives a fault. */
final class Typing {
  /** Fields that belong to no form are put by under this name, to be read by whoever looks for them. */
  static final String OTHERWISE = "other fields";

  private record Form(String name, Supplier<Map<String, String>> texts, Consumer<Map<String, String>> fill) {}

  private final List<Form> forms = new ArrayList<>();

  /**
   * Adds a form.
   *
   * @param name a key that stays the same from version to version
   * @param texts what is typed in it by the names of its fields; empty where nothing is that would be lost
   * @param fill types it again
   */
  void add(String name, Supplier<Map<String, String>> texts, Consumer<Map<String, String>> fill) {
    forms.add(new Form(name, texts, fill));
  }

  /** What is typed in every form, and in the other fields below a node. */
  Map<String, Map<String, String>> texts(Node node) {
    Map<String, Map<String, String>> texts = new LinkedHashMap<>();
    forms.forEach(form -> texts.put(form.name(), form.texts().get()));
    Map<String, String> others = new LinkedHashMap<>();
    gather(node, others);
    texts.put(OTHERWISE, others);
    texts.values().removeIf(Map::isEmpty);
    return texts;
  }

  /** Whether a form holds what would be lost. */
  boolean isBegun() {
    return forms.stream().anyMatch(form -> !form.texts().get().isEmpty());
  }

  private static void gather(Node node, Map<String, String> into) {
    if (node instanceof TextInputControl field) {
      if (field.isEditable() && field.getText() != null && !field.getText().isBlank()) {
        into.put(name(field, into.size()), field.getText());
      }
    } else if (node instanceof Parent parent) {
      parent.getChildrenUnmodifiable().forEach(child -> gather(child, into));
    }
  }

  private static String name(TextInputControl field, int number) {
    String said = field.getAccessibleText();
    return field.getId() != null ? field.getId() : (said == null ? "field" : said) + " " + number;
  }

  /** Types again what was put by, where there is a form for it; the names of those forms. */
  String fill(Map<String, Map<String, String>> texts) {
    return forms.stream().filter(form -> texts.containsKey(form.name())).map(form -> {
      form.fill().accept(texts.get(form.name()));
      return form.name();
    }).collect(Collectors.joining(", "));
  }
}
