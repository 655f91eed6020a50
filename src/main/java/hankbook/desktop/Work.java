package hankbook.desktop;

import java.util.Objects;
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
    away.execute(() -> here.execute(outcome(errand, then, otherwise)));
  }

  /** Whatever is thrown must be told, or the screen would wait for ever. */
  private static <T> Runnable outcome(Callable<T> errand, Consumer<T> then, Consumer<Exception> otherwise) {
    try {
      T answer = errand.call();
      return () -> then.accept(answer);
    } catch (Exception trouble) {
      return () -> otherwise.accept(trouble);
    } catch (Throwable fault) {
      Exception told = new IllegalStateException(Objects.requireNonNullElse(fault.getMessage(), fault.getClass().getSimpleName()), fault);
      return () -> otherwise.accept(told);
    }
  }
}
