package hankbook.desktop;

import hankbook.desktop.say.Say;
import javafx.scene.AccessibleRole;
import javafx.scene.layout.StackPane;
import javafx.scene.shape.Rectangle;

/** A small piece of cloth in a yarn's colour; hatched where the colour was never given. */
final class Swatch extends StackPane {
  private final Rectangle cloth = new Rectangle();

  Swatch(double width, double height) {
    setMinSize(width, height);
    setPrefSize(width, height);
    setMaxSize(width, height);
    getStyleClass().add("swatch");
    cloth.widthProperty().bind(widthProperty().subtract(2));
    cloth.heightProperty().bind(heightProperty().subtract(2));
    cloth.relocate(1, 1);
    cloth.setManaged(false);
    getChildren().add(cloth);
    setAccessibleRole(AccessibleRole.IMAGE_VIEW);
  }

  /** A swatch as wide as there is room. */
  static Swatch wide(double height) {
    Swatch swatch = new Swatch(USE_COMPUTED_SIZE, height);
    swatch.setMaxWidth(Double.MAX_VALUE);
    return swatch;
  }

  /** Shows a colour such as {@code #2f5d8a}, or that there is none. */
  void show(String hex, String name) {
    boolean known = hex.matches("#[0-9a-f]{6}");
    cloth.setVisible(known);
    if (known) {
      cloth.setFill(Weave.of(hex));
    }
    setAccessibleText(known ? Say.text("Colour {0}", name) : Say.text("Colour not known"));
  }
}
