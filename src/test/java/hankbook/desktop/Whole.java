package hankbook.desktop;

import java.util.ArrayList;
import java.util.List;
import javafx.geometry.BoundingBox;
import javafx.geometry.Bounds;
import javafx.scene.Node;
import javafx.scene.Parent;
import javafx.scene.control.Cell;
import javafx.scene.control.Labeled;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.TextInputControl;
import javafx.scene.control.skin.VirtualFlow;
import javafx.scene.text.Text;

/** Whether what a window shows is whole: no words cut off, and nothing where no bar leads. */
final class Whole {
  private static final double TOLERANCE = 1.5;

  private static final Bounds EVERYWHERE = new BoundingBox(-1e6, -1e6, 2e6, 2e6);

  private Whole() {}

  /** The words below a node that are cut off or lie beyond what holds them. */
  static List<String> faults(Node root) {
    List<String> faults = new ArrayList<>();
    gather(root, root.localToScene(root.getLayoutBounds()), faults);
    return faults;
  }

  private static void gather(Node node, Bounds within, List<String> faults) {
    if (!node.isVisible() || !node.isManaged() && node instanceof Labeled) {
      return;
    }
    if (node instanceof Labeled words) {
      cut(words, faults);
    }
    if (node instanceof Labeled || node instanceof TextInputControl) {
      beyond(node, within, faults);
    }
    if (node instanceof ScrollPane scroll && scroll.getContent() != null) {
      gather(scroll.getContent(), scroll.getContent().localToScene(scroll.getContent().getLayoutBounds()), faults);
    } else if (node instanceof Parent parent && !(node instanceof TextInputControl)) {
      boolean scrolls = node instanceof VirtualFlow<?> || node.getStyleClass().contains("column-header-background");
      Bounds inside = scrolls ? EVERYWHERE : within;
      parent.getChildrenUnmodifiable().forEach(child -> gather(child, inside, faults));
    }
  }

  private static Bounds local(Node node) {
    return node.localToScene(node.getLayoutBounds());
  }

  /** Words in a cell may be cut off if a tip says them whole. */
  private static void cut(Labeled words, List<String> faults) {
    String text = words.getText();
    if (text == null || text.isBlank() || words instanceof Cell<?> && words.getTooltip() != null) {
      return;
    }
    boolean whole = words.getChildrenUnmodifiable().stream().filter(Text.class::isInstance).map(Text.class::cast)
        .allMatch(shown -> shown.getText().replaceAll("\\s", "").equals(text.replaceAll("\\s", "")));
    if (!whole && words.getTooltip() == null) {
      faults.add("cut off: " + named(words) + " \"" + text + "\"");
    }
  }

  private static void beyond(Node node, Bounds within, List<String> faults) {
    Bounds at = local(node);
    boolean isEmpty = at.getWidth() <= 0 || at.getHeight() <= 0 || node instanceof Labeled words && (words.getText() == null || words.getText().isBlank());
    if (!isEmpty
        && (at.getMinX() < within.getMinX() - TOLERANCE || at.getMaxX() > within.getMaxX() + TOLERANCE
            || at.getMinY() < within.getMinY() - TOLERANCE || at.getMaxY() > within.getMaxY() + TOLERANCE)) {
      faults.add("beyond what is shown: " + named(node) + (node instanceof Labeled words ? " \"" + words.getText() + "\"" : ""));
    }
  }

  private static String named(Node node) {
    return node.getClass().getSimpleName() + (node.getId() == null ? "" : "#" + node.getId()) + node.getStyleClass();
  }
}
