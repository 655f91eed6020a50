package hankbook.desktop;

import java.util.Locale;
import javafx.scene.control.ContentDisplay;
import javafx.scene.control.Label;
import javafx.scene.layout.StackPane;
import javafx.scene.shape.Arc;
import javafx.scene.shape.ArcType;
import javafx.scene.shape.Circle;

/** How something stands, as a shape beside its word: a full disc, half a disc, a ring, or a broken ring. */
final class StandingMark extends StackPane {
  private static final double RADIUS = 5.5;

  StandingMark(Standing standing) {
    getStyleClass().addAll("standing-mark", styleClass(standing));
    Circle ring = new Circle(RADIUS);
    ring.getStyleClass().add("standing-ring");
    getChildren().add(ring);
    if (standing == Standing.COVERED) {
      ring.getStyleClass().add("standing-full");
    }
    if (standing == Standing.TIGHT) {
      getChildren().add(half());
    }
  }

  private static Arc half() {
    Arc half = new Arc(0, 0, RADIUS, RADIUS, 90, 180);
    half.setType(ArcType.CHORD);
    half.getStyleClass().add("standing-half");
    half.setManaged(false);
    half.layoutXProperty().set(RADIUS + 1);
    half.layoutYProperty().set(RADIUS + 1);
    return half;
  }

  private static String styleClass(Standing standing) {
    return "standing-" + standing.name().toLowerCase(Locale.ROOT);
  }

  /** The mark with its word beside it. */
  static Label labelled(Standing standing) {
    Label label = new Label(standing.word(), new StandingMark(standing));
    label.getStyleClass().addAll("standing", styleClass(standing));
    label.setContentDisplay(ContentDisplay.LEFT);
    label.setMinWidth(USE_PREF_SIZE);
    return label;
  }
}
