package hankbook.desktop;

import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.TimeUnit;
import javafx.animation.PauseTransition;
import javafx.util.Duration;

/** Writes what is remembered a moment after it changed, away from the window, and at the end what is not written yet. */
final class RememberedKeeping {
  private static final Duration MOMENT = Duration.seconds(1);
  private static final int PATIENCE_SECONDS = 3;

  private final Remembered remembered;
  private final RememberedFile file;
  private final PauseTransition moment = new PauseTransition(MOMENT);
  private final ExecutorService writer =
      Executors.newSingleThreadExecutor(task -> Thread.ofPlatform().name("remembering").daemon(true).unstarted(task));
  private boolean unwritten;

  RememberedKeeping(Remembered remembered, RememberedFile file) {
    this.remembered = remembered;
    this.file = file;
    moment.setOnFinished(_ -> write());
    remembered.whenChanged(() -> {
      unwritten = true;
      moment.playFromStart();
    });
  }

  private void write() {
    if (unwritten) {
      unwritten = false;
      String json = remembered.json();
      writer.execute(() -> file.write(json));
    }
  }

  /** Writes what is left and ends. */
  void close() throws InterruptedException {
    moment.stop();
    write();
    writer.shutdown();
    if (!writer.awaitTermination(PATIENCE_SECONDS, TimeUnit.SECONDS)) {
      writer.shutdownNow();
    }
  }
}
