package hankbook.desktop;

import hankbook.desktop.say.Say;
import hankbook.plan.ClothPattern;
import hankbook.plan.ClothThread;
import java.util.Optional;
import javafx.scene.AccessibleRole;
import javafx.scene.canvas.Canvas;
import javafx.scene.canvas.GraphicsContext;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.StackPane;
import javafx.scene.paint.Color;

/** A patch of the cloth so large that each thread is seen, in plain weave; threads whose colour nobody told are hatched. */
final class ClothPatch extends StackPane {
  private static final int WIDTH = 320;
  private static final int HEIGHT = 300;
  private static final int END = 10;
  private static final Color EDGE = Color.color(0, 0, 0, 0.22);
  private static final Color RIDGE = Color.color(1, 1, 1, 0.16);
  private static final Color PALE = Color.web("#d8d8d8");
  private static final Color DARK = Color.web("#8a8a8a");

  private final ClothPattern cloth;
  private final YarnPalette palette;
  private final ClothPlace place;
  private final double pick;
  private final Canvas canvas = new Canvas(WIDTH, HEIGHT);

  /**
   * @param place is laid on the cloth
   */
  ClothPatch(ClothPattern cloth, YarnPalette palette, ClothPlace place) {
    this.cloth = cloth;
    this.palette = palette;
    this.place = place;
    this.pick = Math.clamp(END * cloth.pickPerEnd().doubleValue(), 3, 60);
    place.on(cloth.warp().count(), cloth.weft().map(weft -> weft.count()).orElse(0L), WIDTH / END, (int) (HEIGHT / pick));
    getStyleClass().add("cloth-patch");
    setId("cloth-patch");
    setMaxWidth(USE_PREF_SIZE);
    getChildren().add(canvas);
    setFocusTraversable(true);
    setAccessibleRole(AccessibleRole.IMAGE_VIEW);
    setAccessibleHelp(Say.text("Arrow keys move over the cloth."));
    setOnMousePressed(_ -> requestFocus());
    addEventHandler(KeyEvent.KEY_PRESSED, key -> {
      if (place.move(key.getCode())) {
        key.consume();
      }
    });
    place.endProperty().subscribe(_ -> draw());
    place.pickProperty().subscribe(_ -> draw());
  }

  private void draw() {
    setAccessibleText(Say.text("A closer look at the cloth. {0}", place.words()));
    GraphicsContext pen = canvas.getGraphicsContext2D();
    pen.clearRect(0, 0, WIDTH, HEIGHT);
    boolean woven = cloth.weft().isPresent();
    int rows = woven ? place.along() : 1;
    double tall = woven ? pick : HEIGHT;
    for (int row = 0; row < rows; row++) {
      for (int column = 0; column < place.across(); column++) {
        long end = place.endProperty().get() + column;
        long across = place.pickProperty().get() + row;
        boolean warpOnTop = !woven || cloth.isWarpOnTop(end, across);
        thread(pen, cloth.at(end, across), column * END, row * tall, tall, warpOnTop);
      }
    }
  }

  private void thread(GraphicsContext pen, ClothThread thread, double x, double y, double tall, boolean upright) {
    Optional<Color> colour = palette.colour(thread.yarn());
    pen.setFill(colour.orElse(PALE));
    pen.fillRect(x, y, END, tall);
    if (colour.isEmpty()) {
      hatch(pen, x, y, tall);
    }
    // Each strand is dark at its edges and light along its middle.
    double thick = (upright ? END : tall) / thread.strands();
    for (int strand = 0; strand < thread.strands(); strand++) {
      double from = (upright ? x : y) + strand * thick;
      along(pen, EDGE, x, y, tall, from, thick * 0.14, upright);
      along(pen, RIDGE, x, y, tall, from + thick * 0.35, thick * 0.3, upright);
      along(pen, EDGE, x, y, tall, from + thick * 0.86, thick * 0.14, upright);
    }
  }

  private static void along(GraphicsContext pen, Color shade, double x, double y, double tall, double from, double thick, boolean upright) {
    pen.setFill(shade);
    if (upright) {
      pen.fillRect(from, y, thick, tall);
    } else {
      pen.fillRect(x, from, END, thick);
    }
  }

  private static void hatch(GraphicsContext pen, double x, double y, double tall) {
    pen.setStroke(DARK);
    double step = Math.min(END, tall) / 2;
    for (double at = step / 2; at < END; at += step) {
      pen.strokeLine(x + at, y, x + Math.min(END, at + step), y + Math.min(tall, step));
    }
  }
}
