package hankbook.desktop;

import static org.assertj.core.api.Assertions.assertThat;

import hankbook.desktop.fault.FaultLog;
import hankbook.desktop.fault.Faults;
import hankbook.studio.NotDone;
import hankbook.studio.SampleStudio;
import hankbook.studio.Studio;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import javafx.application.Platform;
import javafx.scene.control.TextField;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class FaultScreenTest extends ScreenTest {
  private static final Clock NOON = Clock.fixed(Instant.parse("2026-03-14T12:00:00Z"), ZoneOffset.UTC);

  @TempDir
  static Path logs;

  private final FaultLog log = new FaultLog(logs).open();
  private final Faults faults = new Faults(log, Platform::runLater, NOON);
  private final List<Path> opened = new ArrayList<>();

  @Override
  void fill(Studio blank) throws NotDone {
    SampleStudio.fill(blank);
  }

  @AfterEach
  void closeLog() {
    log.close();
  }

  @Test
  void aFaultIsSaidCalmlyAndLoggedAndWhatWasTypedComesBackIntoItsForm() throws IOException {
    interact(() -> home().hear(faults, opened::add));
    clickOn("#open-receive");
    interact(() -> lookup("#receive-yarn").queryAs(TextField.class).setText("Half typed wool"));
    new Work(Runnable::run, Platform::runLater, faults::tell).run(
        () -> {
          throw new IllegalStateException("the thread broke");
        },
        _ -> {},
        _ -> {});
    settle();
    assertThat(lookup("#fault-pane").tryQuery()).isPresent();
    assertThat(Files.readString(log.file())).contains("IllegalStateException: the thread broke").contains("at hankbook.desktop.FaultScreenTest");
    assertThat(Files.readString(faults.putBy().file())).contains("\"receive\"").contains("Half typed wool");
    clickOn("#open-log");
    assertThat(opened).containsExactly(logs.toAbsolutePath());
    clickOn("#put-fault-away");
    assertThat(lookup("#fault-pane").tryQuery()).isEmpty();
    interact(() -> lookup("#receive-yarn").queryAs(TextField.class).setText(""));
    Faults others = new Faults(log, Platform::runLater, NOON);
    others.typedIs("another ledger", Map::of);
    assertThat(others.takeOnce()).as("it was meant for this ledger").isEmpty();
    Faults atNextStart = new Faults(log, Platform::runLater, NOON);
    interact(() -> home().hear(atNextStart, opened::add));
    assertThat(lookup("#receive-yarn").queryAs(TextField.class).getText()).isEqualTo("Half typed wool");
    assertThat(textOf("#status")).startsWith("What you had typed when Hankbook failed is back");
    assertThat(faults.putBy().file()).doesNotExist();
    assertThat(Files.readString(logs.resolve("typed-before.json"))).contains("Half typed wool");
    atNextStart.tell(new IllegalStateException("the thread broke again"));
    settle();
    interact(() -> lookup("#receive-yarn").queryAs(TextField.class).setText(""));
    interact(() -> home().hear(atNextStart, opened::add));
    assertThat(lookup("#receive-yarn").queryAs(TextField.class).getText()).as("it comes back at a start alone").isEmpty();
    interact(() -> home().settle(atNextStart));
    assertThat(faults.putBy().file()).as("nothing of it is half typed any more").doesNotExist();
    assertThat(Files.readString(logs.resolve("typed-before-2.json"))).contains("Half typed wool");
  }
}
