package hankbook.desktop;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import javafx.animation.PauseTransition;
import javafx.beans.value.ObservableValue;
import javafx.geometry.Rectangle2D;
import javafx.stage.Stage;
import javafx.stage.WindowEvent;
import javafx.util.Duration;

/** Remembers where the window stands, and puts it there again. */
final class StageMemory {
  private static final String KEY = "window";

  /** Size and maximising are told one after the other; what lies between is not where the window stands. */
  private static final Duration STANDING_STILL = Duration.millis(400);

  private final Stage stage;
  private final Remembered remembered;
  private final PauseTransition still = new PauseTransition(STANDING_STILL);
  private Optional<WindowPlace> place = Optional.empty();

  StageMemory(Stage stage, Remembered remembered) {
    this.stage = stage;
    this.remembered = remembered;
    still.setOnFinished(_ -> note());
  }

  /** Puts the window, which is not shown yet, where it stood. */
  void restore() {
    place = remembered.get(KEY, WindowPlace.class).map(stood -> stood.onto(screens()));
    place.ifPresent(stood -> {
      stage.setX(stood.x());
      stage.setY(stood.y());
      stage.setWidth(stood.width());
      stage.setHeight(stood.height());
      stage.setMaximized(stood.maximised());
    });
  }

  /** Notes from now on where the window, which is shown, is moved. */
  void watch() {
    Stream.<ObservableValue<?>>of(stage.xProperty(), stage.yProperty(), stage.widthProperty(), stage.heightProperty(), stage.maximizedProperty())
        .forEach(property -> property.subscribe((_, _) -> still.playFromStart()));
    stage.addEventHandler(WindowEvent.WINDOW_HIDING, _ -> {
      still.stop();
      note();
    });
  }

  private void note() {
    if (!stage.isIconified() && !stage.isFullScreen()) {
      place = Optional.of(stage.isMaximized() ? place.orElseGet(this::now).maximised(true) : now());
      place.ifPresent(stands -> remembered.put(KEY, stands));
    }
  }

  private WindowPlace now() {
    return new WindowPlace(whole(stage.getX()), whole(stage.getY()), Math.max(1, whole(stage.getWidth())), Math.max(1, whole(stage.getHeight())), false);
  }

  private static int whole(double units) {
    return (int) Math.round(units);
  }

  private static List<Rectangle2D> screens() {
    return Stream.concat(Stream.of(javafx.stage.Screen.getPrimary()), javafx.stage.Screen.getScreens().stream()).distinct()
        .map(javafx.stage.Screen::getVisualBounds).toList();
  }
}
