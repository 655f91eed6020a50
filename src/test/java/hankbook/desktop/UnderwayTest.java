package hankbook.desktop;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowable;

import hankbook.exchange.BadInput;
import hankbook.store.LedgerAddress;
import hankbook.store.LedgerUnavailable;
import hankbook.studio.NotDone;
import hankbook.studio.Progress;
import hankbook.studio.Receive;
import hankbook.studio.Studio;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.concurrent.CancellationException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class UnderwayTest {
  private final List<Runnable> away = new ArrayList<>();
  private final Underway underway = new Underway();
  private final List<String> heard = new ArrayList<>();

  @TempDir
  private Path dir;

  @Test
  void whatGoesOnSaysHowFarItIsUntilItIsDone() {
    List<Double> shares = new ArrayList<>();
    underway.run(new Work(away::add, Runnable::run), "Counting.", progress -> {
      for (int i = 0; i <= 4; i++) {
        progress.at(i, 4);
        shares.add(underway.all().getFirst().shareProperty().get());
      }
      return "counted";
    }, heard::add, trouble -> heard.add(Status.words(trouble)));
    assertThat(underway.all()).singleElement().satisfies(going -> assertThat(going.words()).isEqualTo("Counting."));
    away.getFirst().run();
    assertThat(shares).containsExactly(0.0, 0.25, 0.5, 0.75, 1.0);
    assertThat(heard).containsExactly("counted");
    assertThat(underway.all()).isEmpty();
  }

  @Test
  void whatIsStoppedEndsTheNextTimeItSaysHowFarItIs() {
    Going going = underway.run(new Work(away::add, Runnable::run), "Counting.", progress -> {
      progress.at(1, 2);
      return "counted";
    }, heard::add, trouble -> heard.add(Status.words(trouble)));
    going.stop();
    away.getFirst().run();
    assertThat(heard).containsExactly("Stopped as you asked; nothing of it was written.");
    assertThat(underway.all()).isEmpty();
  }

  @Test
  void aStockFileThatIsStoppedOnItsWayInLeavesNothingBehind() throws LedgerUnavailable, IOException, BadInput, NotDone {
    try (Studio studio = Studio.open(new LedgerAddress.InFile(dir.resolve("ledger")), "Ada");
        InputStream sample = Objects.requireNonNull(UnderwayTest.class.getResourceAsStream("/imports/stock.csv"))) {
      String stock = new String(sample.readAllBytes(), StandardCharsets.UTF_8);
      Progress late = (done, all) -> {
        if (done == all - 1) {
          throw new CancellationException();
        }
      };
      assertThat(catchThrowable(() -> new Receive(studio).file("stock.csv", stock, late))).isInstanceOf(CancellationException.class);
      assertThat(studio.isBlank()).isTrue();
      assertThat(new Receive(studio).file("stock.csv", stock).received()).isPositive();
    }
  }

  @Test
  void aQuestionThatIsOvertakenIsStopped() {
    List<String> asked = new ArrayList<>(List.of("first", "second"));
    Status status = new Status();
    LiveAnswer<String> answer = LiveAnswer.slow(new Work(away::add, Runnable::run), status, () -> "Reckoning.", () -> {
      String mine = asked.removeFirst();
      return Optional.of(progress -> {
        progress.at(0, 1);
        return mine;
      });
    });
    answer.watch(true);
    answer.ask();
    assertThat(status.underway().all()).hasSize(2);
    assertThat(status.underway().all().getLast().stoppingProperty().get()).isTrue();
    away.forEach(Runnable::run);
    assertThat(answer.foundProperty().get()).contains("second");
    assertThat(status.underway().all()).isEmpty();
  }
}
