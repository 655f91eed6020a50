package hankbook.desktop.why;

import java.util.Optional;
import javafx.application.Platform;
import javafx.geometry.Bounds;
import javafx.scene.Node;
import javafx.scene.control.ScrollPane;

/** Brings what was opened into the part of a scrolled page that is seen: as much of it as there is room for, from its top. */
final class InView {
  /** So much of the number that was asked is to be seen above. */
  private static final double MARGIN = 40;

  private InView() {}

  static void bring(Node node) {
    Platform.runLater(() -> scroll(node).ifPresent(pane -> bring(node, pane)));
  }

  private static Optional<ScrollPane> scroll(Node node) {
    for (Node above = node.getParent(); above != null; above = above.getParent()) {
      if (above instanceof ScrollPane pane) {
        return Optional.of(pane);
      }
    }
    return Optional.empty();
  }

  private static void bring(Node node, ScrollPane pane) {
    pane.applyCss();
    pane.layout();
    Bounds at = pane.getContent().sceneToLocal(node.localToScene(node.getBoundsInLocal()));
    double seen = pane.getViewportBounds().getHeight();
    double beyond = pane.getContent().getBoundsInLocal().getHeight() - seen;
    double top = pane.getVvalue() * beyond;
    if (beyond > 0 && at.getMaxY() > top + seen) {
      pane.setVvalue(Math.min(1, Math.min(at.getMinY() - MARGIN, at.getMaxY() - seen) / beyond));
    }
  }
}
