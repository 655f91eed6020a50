package hankbook.desktop;

import hankbook.plan.Band;
import javafx.scene.AccessibleRole;
import javafx.scene.image.ImageView;
import javafx.scene.image.WritableImage;
import javafx.scene.layout.Pane;

/** The threads of a band side by side in true colours and proportion, as wide as there is room. */
final class BandStrip extends Pane {
  private static final int MOST_POINTS = 2000;
  private static final int HEIGHT = 44;

  private final Band band;
  private final YarnPalette palette;
  private final ImageView picture = new ImageView();

  /**
   * @param words the band in words
   */
  BandStrip(Band band, YarnPalette palette, String words) {
    this.band = band;
    this.palette = palette;
    getChildren().add(picture);
    getStyleClass().add("band-strip");
    setMinWidth(0);
    setPrefSize(0, HEIGHT);
    setAccessibleRole(AccessibleRole.IMAGE_VIEW);
    setAccessibleText(words);
  }

  /** Drawn for the very points there are: a picture that is made smaller loses stripes. */
  @Override
  protected void layoutChildren() {
    int points = Math.clamp((long) getWidth(), 1, MOST_POINTS);
    if (picture.getImage() == null || picture.getImage().getWidth() != points) {
      picture.setImage(image(points));
    }
    picture.setFitWidth(getWidth());
    picture.setFitHeight(HEIGHT);
  }

  private WritableImage image(int points) {
    Shades shades = Shades.of(band, points, palette);
    WritableImage image = new WritableImage(points, HEIGHT);
    for (int y = 0; y < HEIGHT; y++) {
      for (int x = 0; x < points; x++) {
        image.getPixelWriter().setArgb(x, y, shades.argb(x, x, y));
      }
    }
    return image;
  }
}
