package hankbook.desktop;

import java.util.concurrent.Callable;
import java.util.concurrent.Executor;
import java.util.function.Consumer;

/**
 * Sends what may take long away from the screen and brings its answer back.
 *
 * @param away where the ledger is asked
 * @param here where screens may be touched
 */
public record Work(Executor away, Executor here) {
  /** Does an errand away from the screen, then tells its answer, or what went wrong, to the screen. */
  public <T> void run(Callable<T> errand, Consumer<T> then, Consumer<Exception> otherwise) {
    away.execute(() -> {
      try {
        T answer = errand.call();
        here.execute(() -> then.accept(answer));
      } catch (Exception trouble) {
        here.execute(() -> otherwise.accept(trouble));
      }
    });
  }
}
