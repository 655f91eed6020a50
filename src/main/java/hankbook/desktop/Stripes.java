package hankbook.desktop;

import java.util.ArrayList;
import java.util.List;
import javafx.scene.layout.Pane;
import javafx.scene.layout.Region;

/** Stretches side by side, each as wide as its part of the whole. */
final class Stripes extends Pane {
  private final List<Long> ends = new ArrayList<>();
  private long total;

  Stripes(String styleClass) {
    getStyleClass().addAll("stripes", styleClass);
    setMinWidth(0);
  }

  /** Adds a stretch at the right. */
  void add(long amount, Region stretch) {
    total += Math.max(0, amount);
    ends.add(total);
    stretch.setManaged(false);
    getChildren().add(stretch);
  }

  @Override
  protected void layoutChildren() {
    double width = getWidth() - snappedLeftInset() - snappedRightInset();
    double height = getHeight() - snappedTopInset() - snappedBottomInset();
    double from = 0;
    for (int i = 0; i < ends.size(); i++) {
      double to = total == 0 ? 0 : snapPositionX(width * ((double) ends.get(i) / total));
      getChildren().get(i).resizeRelocate(snappedLeftInset() + from, snappedTopInset(), to - from, height);
      from = to;
    }
  }
}
