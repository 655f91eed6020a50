package hankbook.desktop.colour;

import hankbook.desktop.say.Say;
import java.util.Optional;
import javafx.geometry.Orientation;
import javafx.scene.Cursor;
import javafx.scene.image.ImageView;
import javafx.scene.image.PixelFormat;
import javafx.scene.image.WritableImage;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.Region;
import javafx.scene.shape.Rectangle;

/** A photograph as large as there is room, with a square around what is pointed at: by the mouse or, with the keyboard in it, by the arrow keys. */
final class PhotographPane extends Region {
  private static final double HIGHEST = 300;
  private static final double MARK = 13;
  private static final int FAR = 20;

  private final ColourPicking model;
  private final ImageView view = new ImageView();
  private final Rectangle dark = mark("photograph-mark-dark", MARK + 2);
  private final Rectangle light = mark("photograph-mark-light", MARK);

  PhotographPane(ColourPicking model) {
    this.model = model;
    setId("photograph");
    getStyleClass().add("photograph");
    setFocusTraversable(true);
    setCursor(Cursor.CROSSHAIR);
    setAccessibleText(Say.text("Photograph; the arrow keys point, Enter takes the colour"));
    view.setManaged(false);
    view.setSmooth(true);
    getChildren().setAll(view, dark, light);
    model.photographProperty().subscribe(this::show);
    model.spotProperty().subscribe(_ -> requestLayout());
    setOnMousePressed(pressed -> point(pressed.getX(), pressed.getY()));
    setOnMouseDragged(dragged -> point(dragged.getX(), dragged.getY()));
    addEventHandler(KeyEvent.KEY_PRESSED, this::pressed);
  }

  private static Rectangle mark(String style, double side) {
    Rectangle mark = new Rectangle(side, side);
    mark.getStyleClass().add(style);
    mark.setManaged(false);
    mark.setMouseTransparent(true);
    return mark;
  }

  private void show(Optional<Photograph> photograph) {
    view.setImage(photograph.map(PhotographPane::image).orElse(null));
    requestLayout();
  }

  private static WritableImage image(Photograph photograph) {
    WritableImage image = new WritableImage(photograph.width(), photograph.height());
    int[] line = new int[photograph.width()];
    for (int y = 0; y < photograph.height(); y++) {
      for (int x = 0; x < line.length; x++) {
        line[x] = 0xff000000 | photograph.at(x, y);
      }
      image.getPixelWriter().setPixels(0, y, line.length, 1, PixelFormat.getIntArgbInstance(), line, 0, line.length);
    }
    return image;
  }

  private void point(double x, double y) {
    requestFocus();
    double scale = scale(getWidth());
    if (scale > 0) {
      model.point(new Spot((int) Math.floor(x / scale), (int) Math.floor(y / scale)));
    }
  }

  private void pressed(KeyEvent key) {
    int step = key.isShiftDown() ? FAR : 1;
    switch (key.getCode()) {
      case LEFT -> model.move(-step, 0);
      case RIGHT -> model.move(step, 0);
      case UP -> model.move(0, -step);
      case DOWN -> model.move(0, step);
      case ENTER -> model.take();
      default -> {
        return;
      }
    }
    key.consume();
  }

  /** How large a point is shown; nothing where there is no photograph. */
  private double scale(double width) {
    return model.photographProperty().get().map(shown -> Math.min(width / shown.width(), HIGHEST / shown.height())).orElse(0.0);
  }

  @Override
  public Orientation getContentBias() {
    return Orientation.HORIZONTAL;
  }

  @Override
  protected double computePrefHeight(double width) {
    return model.photographProperty().get().map(shown -> shown.height() * scale(width)).orElse(0.0);
  }

  @Override
  protected void layoutChildren() {
    double scale = scale(getWidth());
    view.setFitWidth(model.photographProperty().get().map(Photograph::width).orElse(0) * scale);
    view.setPreserveRatio(true);
    Spot spot = model.spotProperty().get();
    for (Rectangle mark : new Rectangle[] {dark, light}) {
      mark.relocate((spot.x() + 0.5) * scale - mark.getWidth() / 2, (spot.y() + 0.5) * scale - mark.getHeight() / 2);
    }
  }
}
