package hankbook.desktop;

import javafx.scene.Node;
import javafx.scene.control.ScrollPane;
import javafx.scene.layout.StackPane;

/** Where the screens are shown: in full, or where the window is too small for one, with bars to reach the rest of it. */
final class Framed extends ScrollPane {
  /** Below this a screen's parts would be cut off. */
  static final double LEAST_WIDTH = 740;

  static final double LEAST_HEIGHT = 470;

  private final StackPane holder = new StackPane() {
    @Override
    protected double computeMinWidth(double height) {
      return Math.max(LEAST_WIDTH, super.computeMinWidth(height));
    }

    @Override
    protected double computeMinHeight(double width) {
      return Math.max(LEAST_HEIGHT, super.computeMinHeight(width));
    }
  };

  Framed() {
    getStyleClass().addAll("edge-to-edge", "framed");
    setContent(holder);
    setFitToWidth(true);
    setFitToHeight(true);
    setFocusTraversable(false);
    setMinSize(0, 0);
  }

  /** Shows a node in the place of what was shown, from its top left on. */
  void show(Node node) {
    holder.getChildren().setAll(node);
    setHvalue(0);
    setVvalue(0);
  }
}
