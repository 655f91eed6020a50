package hankbook.desktop;

import hankbook.measure.Length;
import java.util.List;
import javafx.scene.layout.Pane;
import javafx.scene.layout.Region;

/** How much of a yarn is free, reserved and on the loom: a full, a striped and an empty stretch, all of it as long as it is beside the most there is of any. */
final class StandBar extends Pane {
  private static final double THICK = 10;
  private static final double LEAST = 3;

  private final List<Region> stretches = List.of(stretch("free"), stretch("reserved"), stretch("on-loom"));
  private List<Length> amounts = List.of();
  private Length most = Length.ZERO;

  StandBar() {
    getStyleClass().add("stand-bar");
    setMinWidth(0);
    stretches.forEach(stretch -> stretch.setManaged(false));
    getChildren().addAll(stretches);
  }

  private static Region stretch(String style) {
    Region stretch = new Region();
    stretch.getStyleClass().addAll("stand", style);
    return stretch;
  }

  /** A small mark that looks as a stretch does. */
  static Region mark(String style) {
    Region mark = stretch(style);
    mark.setMinSize(THICK, THICK);
    mark.setMaxSize(THICK, THICK);
    return mark;
  }

  /** @param longest what the whole width stands for */
  void show(ShelfLine line, Length longest) {
    amounts = List.of(line.free().length(), line.reserved().length(), line.onLoom().length());
    most = longest;
    requestLayout();
  }

  @Override
  protected void layoutChildren() {
    double from = 0;
    double y = (getHeight() - THICK) / 2;
    for (int i = 0; i < amounts.size(); i++) {
      boolean some = amounts.get(i).isPositive() && most.isPositive();
      double part = some ? getWidth() * amounts.get(i).tenthsOfMillimetre() / most.tenthsOfMillimetre() : 0;
      double width = some ? Math.max(LEAST, Math.min(part, getWidth() - from)) : 0;
      stretches.get(i).resizeRelocate(from, y, width, THICK);
      from += width;
    }
  }
}
