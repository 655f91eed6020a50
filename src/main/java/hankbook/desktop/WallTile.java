package hankbook.desktop;

import javafx.scene.AccessibleRole;
import javafx.scene.control.Label;
import javafx.scene.layout.Region;
import javafx.scene.shape.Rectangle;

/** A yarn in a colour on the wall: its cloth, and a paper label where there is room for one. */
final class WallTile extends Region {
  private static final double EDGE = 1;
  private static final double LINE = 17;
  private static final double LEAST_ACROSS = 40;
  private static final double AROUND = 14;

  private final Rectangle cloth = new Rectangle();
  private final Label paper = new Label();
  private final GroupRow row;

  WallTile(GroupRow row) {
    this.row = row;
    getStyleClass().addAll("swatch", "wall-tile");
    boolean known = !row.hex().isEmpty();
    cloth.setVisible(known);
    if (known) {
      cloth.setFill(Weave.of(row.hex()));
    }
    paper.getStyleClass().add("wall-paper");
    paper.setMouseTransparent(true);
    getChildren().addAll(cloth, paper);
    setAccessibleRole(AccessibleRole.BUTTON);
    setAccessibleText(row.words());
  }

  GroupRow row() {
    return row;
  }

  @Override
  protected void layoutChildren() {
    cloth.relocate(EDGE, EDGE);
    cloth.setWidth(Math.max(0, getWidth() - 2 * EDGE));
    cloth.setHeight(Math.max(0, getHeight() - 2 * EDGE));
    double across = getWidth() - AROUND;
    int lines = (int) ((getHeight() - AROUND) / LINE);
    paper.setVisible(lines >= 1 && across >= LEAST_ACROSS);
    if (paper.isVisible()) {
      paper.setText(words(lines, fits(row.held().text(), across)));
      paper.resizeRelocate(AROUND / 2, AROUND / 2, Math.min(paper.prefWidth(-1), across), Math.min(paper.prefHeight(-1), getHeight() - AROUND));
    }
  }

  private boolean fits(String text, double across) {
    paper.setText(text);
    return paper.prefWidth(-1) <= across;
  }

  /** As much as so many lines hold; a number that would be cut is left out, since it would be read as another. */
  private String words(int lines, boolean metres) {
    String colour = row.yarn().colour();
    if (lines == 1) {
      return colour;
    }
    String below = metres ? "\n" + row.held() : "";
    return lines == 2 ? colour + below : row.yarn().yarn() + "\n" + colour + below;
  }
}
