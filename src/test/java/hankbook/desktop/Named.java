package hankbook.desktop;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import javafx.scene.Node;
import javafx.scene.Parent;
import javafx.scene.control.ButtonBase;
import javafx.scene.control.ComboBoxBase;
import javafx.scene.control.Label;
import javafx.scene.control.ListView;
import javafx.scene.control.TableView;
import javafx.scene.control.TextArea;
import javafx.scene.control.TextField;
import javafx.scene.control.TextInputControl;

/** Whether a screen reader can say what each thing is that takes the keyboard: WCAG 2.2, success criteria 1.3.1 and 4.1.2. */
final class Named {
  private Named() {}

  /** The controls below a node that have no name, and the fields without a label or an example. */
  static List<String> faults(Node root) {
    Set<Node> labelled = new HashSet<>();
    labels(root, labelled);
    List<String> faults = new ArrayList<>();
    gather(root, labelled, faults);
    return faults;
  }

  private static void labels(Node node, Set<Node> labelled) {
    if (node instanceof Label label && label.getLabelFor() != null) {
      labelled.add(label.getLabelFor());
    }
    if (node instanceof Parent parent) {
      parent.getChildrenUnmodifiable().forEach(child -> labels(child, labelled));
    }
  }

  private static void gather(Node node, Set<Node> labelled, List<String> faults) {
    if (!node.isVisible()) {
      return;
    }
    boolean said = labelled.contains(node) || !isBlank(node.getAccessibleText());
    switch (node) {
      case ButtonBase button when !said && isBlank(button.getText()) -> faults.add("a button without a name: " + named(node));
      case TextField field when !said && isBlank(field.getPromptText()) -> faults.add("a field without a label or an example: " + named(node));
      case TextArea _ when !said -> faults.add("a field without a name: " + named(node));
      case ComboBoxBase<?> _ when !said -> faults.add("a choice without a name: " + named(node));
      case TableView<?> _ when !said -> faults.add("a table without a name: " + named(node));
      case ListView<?> _ when !said -> faults.add("a list without a name: " + named(node));
      default -> {}
    }
    boolean stop = node instanceof TextInputControl || node instanceof ComboBoxBase<?> || node instanceof ButtonBase;
    if (!stop && node instanceof Parent parent) {
      parent.getChildrenUnmodifiable().forEach(child -> gather(child, labelled, faults));
    }
  }

  private static boolean isBlank(String text) {
    return text == null || text.isBlank();
  }

  private static String named(Node node) {
    return node.getClass().getSimpleName() + (node.getId() == null ? "" : "#" + node.getId()) + node.getStyleClass();
  }
}
