package hankbook.desktop;

import javafx.beans.value.ObservableDoubleValue;
import javafx.geometry.Orientation;
import javafx.scene.Node;
import javafx.scene.control.ScrollBar;
import javafx.scene.control.TableView;

/** Lets the first column of a wide table stay in its place while the others move under it. */
final class StayingColumn {
  private StayingColumn() {}

  /** Holds a cell or a head in its place; it must be opaque. */
  static void hold(Node node, ObservableDoubleValue moved) {
    node.translateXProperty().bind(moved);
    node.setViewOrder(-1);
  }

  /** The bar by which a table moves sideways, once it has its skin. */
  static ScrollBar bar(TableView<?> table) {
    return table.lookupAll(".scroll-bar").stream()
        .filter(node -> node instanceof ScrollBar bar && bar.getOrientation() == Orientation.HORIZONTAL)
        .map(ScrollBar.class::cast)
        .findFirst()
        .orElseThrow(() -> new IllegalStateException("the table has no skin yet"));
  }
}
