package hankbook.desktop.colour;

import hankbook.desktop.say.Say;
import javafx.scene.AccessibleRole;
import javafx.scene.image.ImageView;
import javafx.scene.image.WritableImage;
import javafx.scene.layout.StackPane;
import javafx.scene.shape.Rectangle;

/** What is pointed at, point by point; a square in it shows of what the colour is the mean. */
final class MagnifiedPatch extends StackPane {
  private static final int AROUND = 7;
  private static final int POINT = 6;

  private final WritableImage image = new WritableImage(2 * AROUND + 1, 2 * AROUND + 1);

  MagnifiedPatch(ColourPicking model) {
    double side = POINT * image.getWidth();
    getStyleClass().add("magnified");
    setMinSize(side, side);
    setMaxSize(side, side);
    setAccessibleRole(AccessibleRole.IMAGE_VIEW);
    setAccessibleText(Say.text("What is pointed at, magnified"));
    ImageView view = new ImageView(image);
    view.setSmooth(false);
    view.setFitWidth(side);
    view.setFitHeight(side);
    Rectangle patch = new Rectangle(POINT * (2 * Photograph.REACH + 1), POINT * (2 * Photograph.REACH + 1));
    patch.getStyleClass().add("photograph-mark-light");
    getChildren().addAll(view, patch);
    model.photographProperty().subscribe(_ -> show(model));
    model.spotProperty().subscribe(_ -> show(model));
  }

  private void show(ColourPicking model) {
    Spot spot = model.spotProperty().get();
    model.photographProperty().get().ifPresent(photograph -> {
      for (int y = 0; y <= 2 * AROUND; y++) {
        for (int x = 0; x <= 2 * AROUND; x++) {
          image.getPixelWriter().setArgb(x, y, 0xff000000 | photograph.at(spot.x() + x - AROUND, spot.y() + y - AROUND));
        }
      }
    });
  }
}
