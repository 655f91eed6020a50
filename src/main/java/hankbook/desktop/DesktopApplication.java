package hankbook.desktop;

import hankbook.store.LedgerAddress;
import hankbook.studio.Studio;
import java.util.Optional;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.TimeUnit;
import javafx.application.Application;
import javafx.application.Platform;
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

  /** Plans are reckoned beside it; their model keeps its own order. */
  private final ExecutorService reckoners = Executors.newFixedThreadPool(2, task -> Thread.ofPlatform().name("reckoner").daemon(true).unstarted(task));

  private final Work work = new Work(ledgerThread, Platform::runLater);
  private final Status status = new Status();
  private final Scene scene = new Scene(new StackPane(), WIDTH, HEIGHT);
  private Optional<Studio> open = Optional.empty();
  private Optional<Home> atHome = Optional.empty();

  @Override
  public void start(Stage stage) {
    Thread.currentThread().setUncaughtExceptionHandler((thread, fault) -> status.wrong(Status.words(fault)));
    Theme.LIGHT.on(scene);
    stage.setTitle("Hankbook");
    stage.setMinWidth(LEAST_WIDTH);
    stage.setMinHeight(LEAST_HEIGHT);
    stage.setScene(scene);
    stage.show();
    open();
  }

  private void open() {
    String ledger = getParameters().getRaw().get(0);
    String author = getParameters().getRaw().get(1);
    scene.setRoot(new StackPane(Labels.quiet("Opening the ledger…")));
    work.run(
        () -> Studio.open(ledger.isBlank() ? LedgerAddress.standard() : LedgerAddress.parse(ledger), author), this::opened,
        trouble -> scene.setRoot(new ClosedBook(Status.words(trouble), this::open)));
  }

  private void opened(Studio studio) {
    open = Optional.of(studio);
    Home home = new Home(studio, work, new Work(reckoners, Platform::runLater), status);
    atHome = Optional.of(home);
    scene.setRoot(home.node());
    home.begin(scene);
  }

  /** What was typed last is kept before the ledger closes. */
  @Override
  public void stop() throws InterruptedException {
    atHome.ifPresent(Home::keep);
    finish(reckoners);
    finish(ledgerThread);
    open.ifPresent(Studio::close);
  }

  private static void finish(ExecutorService threads) throws InterruptedException {
    threads.shutdown();
    if (!threads.awaitTermination(PATIENCE_SECONDS, TimeUnit.SECONDS)) {
      threads.shutdownNow();
    }
  }
}
