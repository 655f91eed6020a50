package hankbook.desktop;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import org.junit.jupiter.api.Test;

class ClosingTest {
  private final List<Consumer<Boolean>> waiting = new ArrayList<>();
  private final Status status = new Status();
  private int closed;
  private final Closing closing = new Closing(waiting::add, status, () -> closed++);

  @Test
  void theWindowClosesOnceAllIsKept() {
    closing.ask();
    closing.ask();
    assertThat(closed).isZero();
    assertThat(waiting).hasSize(1);
    waiting.getFirst().accept(true);
    closing.tire();
    assertThat(closed).isEqualTo(1);
    assertThat(status.earlier()).isEmpty();
  }

  @Test
  void whatCannotBeKeptIsSaidAndTheWindowClosesOnTheSecondRequest() {
    closing.ask();
    waiting.getFirst().accept(false);
    assertThat(closed).isZero();
    assertThat(status.lastProperty().get().trouble()).isTrue();
    closing.ask();
    assertThat(closed).isEqualTo(1);
  }

  @Test
  void aLedgerThatNeverAnswersIsNotWaitedForForever() {
    closing.ask();
    closing.tire();
    assertThat(status.lastProperty().get().text()).startsWith("Not everything that was typed could be kept");
    waiting.getFirst().accept(true);
    assertThat(closed).isZero();
    closing.ask();
    assertThat(closed).isEqualTo(1);
  }
}
