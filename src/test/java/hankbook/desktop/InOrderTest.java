package hankbook.desktop;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.concurrent.Executor;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.RejectedExecutionException;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class InOrderTest {
  @Test
  void errandsRunInTheirOrderHoweverManyHandsThereAre() throws InterruptedException {
    List<Integer> ran = Collections.synchronizedList(new ArrayList<>());
    ExecutorService hands = Executors.newFixedThreadPool(4);
    InOrder inOrder = new InOrder(hands);
    IntStream.range(0, 1_000).forEach(number -> inOrder.execute(() -> ran.add(number)));
    inOrder.execute(hands::shutdown);
    assertThat(hands.awaitTermination(10, TimeUnit.SECONDS)).isTrue();
    assertThat(ran).containsExactlyElementsOf(IntStream.range(0, 1_000).boxed().toList());
  }

  @Test
  void anErrandMayGiveAnother() {
    List<String> ran = new ArrayList<>();
    InOrder inOrder = new InOrder(Runnable::run);
    inOrder.execute(() -> {
      inOrder.execute(() -> ran.add("second"));
      ran.add("first");
    });
    assertThat(ran).containsExactly("first", "second");
  }

  @Test
  void anErrandThatBreaksDoesNotHoldUpTheNext() {
    List<String> ran = new ArrayList<>();
    InOrder inOrder = new InOrder(hand(ran));
    inOrder.execute(() -> {
      inOrder.execute(() -> ran.add("next"));
      throw new IllegalStateException("broken");
    });
    assertThat(ran).containsExactly("broken", "next");
  }

  @Test
  void anErrandThatEndsInAnErrorDoesNotHoldUpTheNext() {
    List<String> ran = new ArrayList<>();
    InOrder inOrder = new InOrder(hand(ran));
    inOrder.execute(() -> {
      inOrder.execute(() -> ran.add("next"));
      throw new AssertionError("broken");
    });
    assertThat(ran).containsExactly("broken", "next");
  }

  @Test
  void anExecutorThatRefusesOnceIsAskedAgain() {
    List<String> ran = new ArrayList<>();
    AtomicBoolean refuses = new AtomicBoolean(true);
    InOrder inOrder = new InOrder(errand -> {
      if (refuses.getAndSet(false)) {
        throw new RejectedExecutionException("not now");
      }
      errand.run();
    });
    assertThatThrownBy(() -> inOrder.execute(() -> ran.add("first"))).hasMessage("not now");
    inOrder.execute(() -> ran.add("second"));
    assertThat(ran).containsExactly("first", "second");
  }

  /** Runs errands at once on a thread of its own, and notes what breaks on it. */
  private static Executor hand(List<String> notes) {
    return errand -> {
      Thread thread = new Thread(errand);
      thread.setUncaughtExceptionHandler((_, broken) -> notes.add(String.valueOf(broken.getMessage())));
      thread.start();
      try {
        thread.join();
      } catch (InterruptedException interrupted) {
        throw new IllegalStateException(interrupted);
      }
    };
  }
}
