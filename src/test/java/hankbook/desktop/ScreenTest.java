package hankbook.desktop;

import hankbook.store.LedgerAddress;
import hankbook.store.LedgerUnavailable;
import hankbook.studio.NotDone;
import hankbook.studio.Studio;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.Objects;
import java.util.Optional;
import java.util.UUID;
import javafx.application.Platform;
import javafx.scene.Scene;
import javafx.scene.control.Label;
import javafx.scene.control.Labeled;
import javafx.stage.Stage;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.io.TempDir;
import org.testfx.framework.junit5.ApplicationTest;
import org.testfx.util.WaitForAsyncUtils;

/** The whole window over a ledger file of its own. */
abstract class ScreenTest extends ApplicationTest {
  private static final Clock NOON = Clock.fixed(Instant.parse("2026-03-14T12:00:00Z"), ZoneOffset.UTC);

  @TempDir
  static Path dir;

  private final Remembered remembered = Remembered.nothing();
  private @Nullable Studio studio;
  private @Nullable Home home;

  /** Fills the ledger before the window opens. */
  void fill(Studio blank) throws NotDone {}

  /** The file that the user chooses when asked. */
  Optional<Path> file() {
    return Optional.empty();
  }

  /** How the window was left; it is written nowhere. */
  Remembered remembered() {
    return remembered;
  }

  /** What time it is, the same for as long as the window is open unless a test is about what comes later. */
  Clock clock() {
    return NOON;
  }

  double width() {
    return 1000;
  }

  /** What the file of the ledger is called; no two windows may share one. */
  String ledger() {
    return UUID.randomUUID().toString();
  }

  final Studio studio() {
    return Objects.requireNonNull(studio);
  }

  final Home home() {
    return Objects.requireNonNull(home);
  }

  final String textOf(String query) {
    return lookup(query).queryAs(Labeled.class).getText();
  }

  /** Waits until the screen stands still. */
  final void settle() {
    WaitForAsyncUtils.waitForFxEvents();
  }

  @Override
  public void start(Stage stage) throws LedgerUnavailable, NotDone {
    studio = Studio.open(new LedgerAddress.InFile(dir.resolve(ledger())), "Ada", clock());
    fill(studio);
    Work work = new Work(Runnable::run, Platform::runLater);
    home = new Home(studio, work, work, new Status(), remembered());
    Scene scene = new Scene(home().node(), width(), 760);
    Theme.in(remembered()).on(scene);
    stage.setScene(scene);
    stage.show();
    home().begin(scene, this::file);
  }

  @AfterEach
  void closeLedger() {
    studio().close();
  }
}
