package hankbook.desktop;

import hankbook.studio.PlanStep;
import java.util.Locale;
import javafx.scene.layout.StackPane;
import javafx.scene.shape.Circle;
import javafx.scene.shape.Line;

/** A step of a plan's life as a shape: a disc for what is done, a disc in a ring for now, a ring for what comes, a dash for what was left out. */
final class PlanStepMark extends StackPane {
  private static final double RADIUS = 5.5;
  private static final double CORE = 2.5;

  PlanStepMark(PlanStep.State state) {
    getStyleClass().addAll("step-mark", "step-" + state.name().toLowerCase(Locale.ROOT).replace('_', '-'));
    switch (state) {
      case DONE -> getChildren().add(circle(RADIUS, "step-full"));
      case NOW -> getChildren().addAll(circle(RADIUS, "step-ring"), circle(CORE, "step-full"));
      case NEXT, LATER -> getChildren().add(circle(RADIUS, "step-ring"));
      case LEFT_OUT -> {
        Line dash = new Line(0, 0, RADIUS * 2, 0);
        dash.getStyleClass().add("step-ring");
        getChildren().add(dash);
      }
    }
  }

  private static Circle circle(double radius, String styleClass) {
    Circle circle = new Circle(radius);
    circle.getStyleClass().add(styleClass);
    return circle;
  }
}
