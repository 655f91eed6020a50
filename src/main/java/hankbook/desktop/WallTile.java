package hankbook.desktop;

import javafx.scene.AccessibleRole;
import javafx.scene.control.Label;
import javafx.scene.layout.Region;
import javafx.scene.shape.Rectangle;

/** A yarn in a colour on the wall: its cloth, and a paper label where there is room for one. */
final class WallTile extends Region {
  private static final double GAP = 1;
  private static final double LINE = 17;
  private static final double LEAST_WIDTH = 66;
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
    cloth.setWidth(Math.max(0, getWidth() - GAP));
    cloth.setHeight(Math.max(0, getHeight() - GAP));
    int lines = (int) ((getHeight() - AROUND) / LINE);
    paper.setVisible(lines >= 1 && getWidth() >= LEAST_WIDTH);
    if (paper.isVisible()) {
      paper.setText(words(lines));
      double width = Math.min(paper.prefWidth(-1), getWidth() - AROUND);
      paper.resizeRelocate(AROUND / 2, AROUND / 2, width, Math.min(paper.prefHeight(-1), getHeight() - AROUND));
    }
  }

  /** As much as so many lines hold. */
  private String words(int lines) {
    String colour = row.yarn().colour();
    return switch (Math.min(lines, 3)) {
      case 1 -> colour;
      case 2 -> colour + "\n" + row.held();
      default -> row.yarn().yarn() + "\n" + colour + "\n" + row.held();
    };
  }
}
