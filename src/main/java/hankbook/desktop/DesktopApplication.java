package hankbook.desktop;

import hankbook.desktop.fault.FaultLog;
import hankbook.desktop.fault.FaultPane;
import hankbook.desktop.fault.Faults;
import hankbook.desktop.say.Say;
import hankbook.store.LedgerAddress;
import hankbook.studio.Studio;
import java.nio.file.Path;
import java.time.Clock;
import java.util.Optional;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.TimeUnit;
import javafx.animation.Animation;
import javafx.animation.KeyFrame;
import javafx.animation.PauseTransition;
import javafx.animation.Timeline;
import javafx.application.Application;
import javafx.application.Platform;
import javafx.scene.Node;
import javafx.scene.Scene;
import javafx.scene.layout.StackPane;
import javafx.stage.Stage;
import javafx.util.Duration;

/** The window on the screen. The ledger is opened once the window stands, so that a slow or locked ledger never looks like no start at all. */
public final class DesktopApplication extends Application {
  private static final double WIDTH = 1280;
  private static final double HEIGHT = 820;
  private static final double LEAST_WIDTH = 900;
  private static final double LEAST_HEIGHT = 620;
  private static final int PATIENCE_SECONDS = 10;
  private static final Duration TO_KEEP = Duration.seconds(4);
  private static final Duration NEWS_EVERY = Duration.seconds(3);

  /** One thread, so that shelf and journal are asked in the order in which the user acted. */
  private final ExecutorService ledgerThread =
      Executors.newSingleThreadExecutor(task -> Thread.ofPlatform().name("ledger").daemon(true).unstarted(task));

  /** Plans are kept and reckoned beside it, in an order of their own; after moving yarn they let shelf and journal be read anew. */
  private final ExecutorService reckoners = Executors.newFixedThreadPool(2, task -> Thread.ofPlatform().name("reckoner").daemon(true).unstarted(task));

  private final FaultLog log = FaultLog.standard().open();
  private final Faults faults = new Faults(log, Platform::runLater, Clock.systemUTC());
  private final Work work = new Work(ledgerThread, Platform::runLater, faults::tell);
  private final Status status = new Status();
  private final Scene scene = new Scene(new StackPane(), WIDTH, HEIGHT);
  private final RememberedFile file = RememberedFile.standard();
  private final Remembered remembered = file.read();
  private final RememberedKeeping remembering = new RememberedKeeping(remembered, file);
  private Optional<Studio> open = Optional.empty();
  private Optional<Home> atHome = Optional.empty();

  @Override
  public void start(Stage stage) {
    Thread.setDefaultUncaughtExceptionHandler((_, fault) -> faults.tell(fault));
    faults.lastProperty().subscribe(this::withoutHome);
    YouModel.speakAs(remembered);
    Theme.in(remembered).on(scene);
    stage.setTitle(Say.text("Hankbook"));
    stage.setMinWidth(LEAST_WIDTH);
    stage.setMinHeight(LEAST_HEIGHT);
    stage.setScene(scene);
    closeWith(stage);
    StageMemory place = new StageMemory(stage, remembered);
    place.restore();
    stage.show();
    place.watch();
    open();
  }

  /** The window stays until what was typed last is kept; it closes all the same on a second request. */
  private void closeWith(Stage stage) {
    Closing closing = new Closing(then -> atHome.ifPresentOrElse(home -> home.keep(then), () -> then.accept(true)), status, () -> {
      atHome.ifPresent(Home::closeGuide);
      stage.hide();
    });
    PauseTransition patience = new PauseTransition(TO_KEEP);
    patience.setOnFinished(_ -> closing.tire());
    stage.setOnCloseRequest(request -> {
      request.consume();
      closing.ask();
      patience.playFromStart();
    });
  }

  private void open() {
    String ledger = getParameters().getRaw().get(0);
    String author = getParameters().getRaw().get(1);
    scene.setRoot(new StackPane(Labels.quiet(Say.text("Opening the ledger…"))));
    work.run(
        () -> Studio.open(ledger.isBlank() ? LedgerAddress.standard() : LedgerAddress.parse(ledger), author), this::opened,
        trouble -> scene.setRoot(new ClosedBook(Status.words(trouble), this::open)));
  }

  /** A fault before the screens stand is all that there is to show. */
  private void withoutHome(Optional<Faults.Told> told) {
    if (atHome.isEmpty()) {
      told.ifPresent(fault -> scene.setRoot(new FaultPane(fault, this::show, this::open)));
    }
  }

  private void show(Path folder) {
    getHostServices().showDocument(folder.toUri().toString());
  }

  /** Only what a browser shows is handed on; another kind of address could start whatever the system has for it. */
  private void showOutside(String address) {
    if (address.startsWith("https://") || address.startsWith("http://")) {
      getHostServices().showDocument(address);
    }
  }

  private void opened(Studio studio) {
    open = Optional.of(studio);
    atHome(studio).begin(scene);
    Timeline news = new Timeline(new KeyFrame(NEWS_EVERY, _ -> atHome.ifPresent(Home::lookForNews)));
    news.setCycleCount(Animation.INDEFINITE);
    news.play();
  }

  private Home atHome(Studio studio) {
    Home home = new Home(studio, work, new Work(reckoners, Platform::runLater, faults::tell), status, remembered);
    home.hear(faults, this::show);
    home.leadsOut(this::showOutside);
    home.whenOtherwise(change -> home.keep(kept -> otherwise(studio, home, kept && !home.isBegun(), change)));
    atHome = Optional.of(home);
    scene.setRoot(home.node());
    return home;
  }

  /** Makes the change and then all that stands in the window anew, on the same ledger and at the same place. */
  private void otherwise(Studio studio, Home before, boolean kept, Runnable change) {
    if (kept) {
      String focus = Optional.ofNullable(scene.getFocusOwner()).map(Node::getId).orElse("");
      Optional<String> guide = before.closeGuide();
      change.run();
      Home home = atHome(studio);
      home.follow(before);
      home.resume(scene, focus);
      guide.ifPresent(home::openGuide);
    } else {
      before.speaksAsBefore();
      status.wrong(Say.text("Language and units stay as they are, or what you have half typed would be lost. Enter it or clear it, then choose again."));
    }
  }

  /** What is under way is done before the ledger closes. */
  @Override
  public void stop() throws InterruptedException {
    remembering.close();
    atHome.ifPresent(home -> home.settle(faults));
    finish(reckoners);
    finish(ledgerThread);
    open.ifPresent(Studio::close);
    log.close();
  }

  private static void finish(ExecutorService threads) throws InterruptedException {
    threads.shutdown();
    if (!threads.awaitTermination(PATIENCE_SECONDS, TimeUnit.SECONDS)) {
      threads.shutdownNow();
    }
  }
}
