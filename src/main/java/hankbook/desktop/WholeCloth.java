package hankbook.desktop;

import hankbook.desktop.say.Say;
import hankbook.plan.ClothPattern;
import java.util.Optional;
import javafx.scene.AccessibleRole;
import javafx.scene.image.ImageView;
import javafx.scene.image.WritableImage;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.Pane;
import javafx.scene.shape.Rectangle;

/** The whole cloth in plain weave, in proportion as far as there is room, with a frame round the patch that is looked at closely. */
final class WholeCloth extends Pane {
  static final int WIDEST = 320;
  private static final int TALLEST = 360;
  private static final int NARROWEST = 240;

  private final ClothPattern cloth;
  private final ClothPlace place;
  private final Rectangle frame = new Rectangle();
  private final int width;
  private final int height;

  /**
   * @param words the cloth in words
   */
  WholeCloth(ClothPattern cloth, YarnPalette palette, ClothPlace place, String words) {
    this.cloth = cloth;
    this.place = place;
    double tall = tall(cloth);
    this.width = Math.clamp(Math.round(TALLEST / tall), NARROWEST, WIDEST);
    this.height = Math.clamp(Math.round(width * tall), 8, TALLEST);
    getStyleClass().add("whole-cloth");
    setId("whole-cloth");
    setMinSize(width, height);
    setMaxSize(width, height);
    frame.getStyleClass().add("cloth-frame");
    frame.setManaged(false);
    getChildren().addAll(new ImageView(image(palette)), frame);
    setAccessibleRole(AccessibleRole.IMAGE_VIEW);
    setAccessibleText(words);
    setAccessibleHelp(Say.text("Arrow keys move the closer look."));
    moving();
  }

  private void moving() {
    setFocusTraversable(true);
    setOnMousePressed(press -> look(press.getX(), press.getY()));
    setOnMouseDragged(drag -> look(drag.getX(), drag.getY()));
    addEventHandler(KeyEvent.KEY_PRESSED, key -> {
      if (place.move(key.getCode())) {
        key.consume();
      }
    });
    place.endProperty().subscribe(_ -> frame());
    place.pickProperty().subscribe(_ -> frame());
  }

  /** How often the cloth is as tall as it is wide, as it stands on the loom; a square where it has no weft. */
  private static double tall(ClothPattern cloth) {
    return cloth.weft().map(weft -> weft.count() * cloth.pickPerEnd().doubleValue() / cloth.warp().count()).orElse(0.5);
  }

  /** Says that the cloth is longer than it is drawn, where it is. */
  static Optional<String> squeezed(ClothPattern cloth) {
    double tall = tall(cloth);
    return tall * NARROWEST <= TALLEST ? Optional.empty() : Optional.of(Say.text("It is drawn shorter than it is: it is {0} times as long as wide.", Math.round(tall)));
  }

  private WritableImage image(YarnPalette palette) {
    WritableImage image = new WritableImage(width, height);
    Shades warp = Shades.of(cloth.warp(), width, palette);
    Optional<Shades> weft = cloth.weft().map(band -> Shades.of(band, height, palette));
    for (int y = 0; y < height; y++) {
      for (int x = 0; x < width; x++) {
        image.getPixelWriter().setArgb(x, y, weft.isPresent() ? warp.argb(x, weft.get(), y, x, y) : warp.argb(x, x, y));
      }
    }
    return image;
  }

  private void look(double x, double y) {
    requestFocus();
    place.around((long) (x / width * cloth.warp().count()), (long) (y / height * picks()));
  }

  private long picks() {
    return cloth.weft().map(weft -> weft.count()).orElse(0L);
  }

  private void frame() {
    double end = (double) width / cloth.warp().count();
    double pick = picks() == 0 ? 0 : (double) height / picks();
    frame.setX(place.endProperty().get() * end);
    frame.setY(place.pickProperty().get() * pick);
    frame.setWidth(Math.max(4, place.across() * end));
    frame.setHeight(picks() == 0 ? height : Math.max(4, place.along() * pick));
  }
}
