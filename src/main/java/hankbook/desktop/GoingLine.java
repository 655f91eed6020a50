package hankbook.desktop;

import hankbook.desktop.say.Say;
import javafx.animation.PauseTransition;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ProgressBar;
import javafx.scene.layout.HBox;
import javafx.util.Duration;
import javafx.util.Subscription;

/** What goes on at the moment, how far it is, and the way to stop it. What is done at once is never shown. */
final class GoingLine extends HBox {
  private static final Duration AT_ONCE = Duration.millis(300);

  private final Underway underway;
  private final PauseTransition patience = new PauseTransition(AT_ONCE);
  private final Subscription hears;

  GoingLine(Underway underway) {
    this.underway = underway;
    getStyleClass().add("going");
    setVisible(false);
    managedProperty().bind(visibleProperty());
    patience.setOnFinished(_ -> setVisible(!underway.all().isEmpty()));
    hears = underway.all().subscribe(this::show);
  }

  /** Hears no more of what goes on, which outlives it. */
  void leave() {
    hears.unsubscribe();
  }

  private void show() {
    if (underway.all().isEmpty()) {
      patience.stop();
      setVisible(false);
      getChildren().clear();
      return;
    }
    show(underway.all().getFirst());
    if (!isVisible()) {
      patience.play();
    }
  }

  private void show(Going going) {
    Label words = Labels.quiet(going.words());
    ProgressBar bar = new ProgressBar();
    bar.setId("progress");
    bar.progressProperty().bind(going.shareProperty());
    bar.setAccessibleText(going.words());
    Button stop = new Button(Say.text("Cancel"));
    stop.setId("stop");
    stop.getStyleClass().add("small");
    stop.setAccessibleText(Say.text("Cancel: {0}", going.words()));
    stop.disableProperty().bind(going.stoppingProperty());
    stop.setMinWidth(USE_PREF_SIZE);
    stop.setOnAction(_ -> going.stop());
    getChildren().setAll(words, bar, stop);
  }
}
