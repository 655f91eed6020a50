package hankbook.desktop;

import hankbook.plan.Band;
import javafx.scene.AccessibleRole;
import javafx.scene.image.ImageView;
import javafx.scene.image.WritableImage;
import javafx.scene.layout.Pane;

/** The threads of a band side by side in true colours and proportion, as wide as there is room. */
final class BandStrip extends Pane {
  private static final int POINTS = 1200;
  private static final int HEIGHT = 44;

  private final ImageView picture = new ImageView();

  /**
   * @param words the band in words
   */
  BandStrip(Band band, YarnPalette palette, String words) {
    Shades shades = Shades.of(band, POINTS, palette);
    WritableImage image = new WritableImage(POINTS, HEIGHT);
    for (int y = 0; y < HEIGHT; y++) {
      for (int x = 0; x < POINTS; x++) {
        image.getPixelWriter().setArgb(x, y, shades.argb(x, x, y));
      }
    }
    picture.setImage(image);
    picture.setFitHeight(HEIGHT);
    getChildren().add(picture);
    getStyleClass().add("band-strip");
    setMinWidth(0);
    setPrefSize(0, HEIGHT);
    setAccessibleRole(AccessibleRole.IMAGE_VIEW);
    setAccessibleText(words);
  }

  @Override
  protected void layoutChildren() {
    picture.setFitWidth(Math.max(1, getWidth()));
  }
}
