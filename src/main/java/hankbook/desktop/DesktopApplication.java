package hankbook.desktop;

import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.TimeUnit;
import javafx.application.Application;
import javafx.scene.Scene;
import javafx.scene.layout.StackPane;
import javafx.stage.Stage;

/** The window on the screen. The ledger is opened once the window stands, so that a slow or locked ledger never looks like no start at all. */
public final class DesktopApplication extends Application {
  private static final double WIDTH = 1280;
  private static final double HEIGHT = 820;
  private static final double LEAST_WIDTH = 900;
  private static final double LEAST_HEIGHT = 620;
  private static final int PATIENCE_SECONDS = 10;

  /** One thread, so that the ledger is asked in the order in which the user acted. */
  private final ExecutorService ledgerThread =
      Executors.newSingleThreadExecutor(task -> Thread.ofPlatform().name("ledger").daemon(true).unstarted(task));

  @Override
  public void start(Stage stage) {
    Scene scene = new Scene(new StackPane(Labels.quiet("Opening the ledger…")), WIDTH, HEIGHT);
    Theme.LIGHT.on(scene);
    stage.setTitle("Hankbook");
    stage.setMinWidth(LEAST_WIDTH);
    stage.setMinHeight(LEAST_HEIGHT);
    stage.setScene(scene);
    stage.show();
  }

  @Override
  public void stop() throws InterruptedException {
    ledgerThread.shutdown();
    if (!ledgerThread.awaitTermination(PATIENCE_SECONDS, TimeUnit.SECONDS)) {
      ledgerThread.shutdownNow();
    }
  }
}
