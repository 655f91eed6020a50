package hankbook.desktop;

import javafx.event.EventTarget;
import javafx.scene.Node;

/** Which part of a control an event of the mouse went to. */
final class Pressed {
  private Pressed() {}

  /** Whether the event went to a part of that style, or to something in it. */
  static boolean within(String style, EventTarget target) {
    for (Node node = target instanceof Node hit ? hit : null; node != null; node = node.getParent()) {
      if (node.getStyleClass().contains(style)) {
        return true;
      }
    }
    return false;
  }
}
