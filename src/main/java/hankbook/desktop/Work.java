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
 * @param faults hears, away from the screen, of what is the program's own fault; whoever sent the errand is told all the same
 */
public record Work(Executor away, Executor here, Consumer<Throwable> faults) {
  /** With nobody who hears of faults but those who sent the errands. */
  public Work(Executor away, Executor here) {
    this(away, here, _ -> {});
  }

  /** The same, but one errand after the other, however many hands there are. */
  Work inOrder() {
    return new Work(new InOrder(away), here, faults);
  }

  /** Does an errand away from the screen, then tells its answer, or what went wrong, to the screen. */
  public <T> void run(Callable<T> errand, Consumer<T> then, Consumer<Exception> otherwise) {
    away.execute(() -> here.execute(outcome(errand, then, otherwise)));
  }

  /** Whatever is thrown must be told, or the screen would wait for ever. */
  private <T> Runnable outcome(Callable<T> errand, Consumer<T> then, Consumer<Exception> otherwise) {
    try {
      T answer = errand.call();
      return () -> then.accept(answer);
    } catch (Exception trouble) {
      if (Status.isOwnFault(trouble)) {
        faults.accept(trouble);
      }
      return () -> otherwise.accept(trouble);
    } catch (Throwable fault) {
      faults.accept(fault);
      Exception told = new IllegalStateException(Objects.requireNonNullElse(fault.getMessage(), fault.getClass().getSimpleName()), fault);
      return () -> otherwise.accept(told);
    }
  }
}
