package hankbook.desktop;

import java.util.ArrayDeque;
import java.util.Queue;
import java.util.concurrent.Executor;

/** Runs errands one after the other in the order they were given, however many hands the executor behind it has. */
final class InOrder implements Executor {
  private final Executor executor;
  private final Queue<Runnable> waiting = new ArrayDeque<>();
  private boolean running;

  InOrder(Executor executor) {
    this.executor = executor;
  }

  @Override
  public void execute(Runnable errand) {
    synchronized (waiting) {
      waiting.add(errand);
      if (running) {
        return;
      }
      running = true;
    }
    executor.execute(this::runAll);
  }

  private void runAll() {
    while (true) {
      Runnable next;
      synchronized (waiting) {
        if (waiting.isEmpty()) {
          running = false;
          return;
        }
        next = waiting.remove();
      }
      runOne(next);
    }
  }

  /** One that breaks must not keep the others waiting for ever. */
  private static void runOne(Runnable next) {
    try {
      next.run();
    } catch (RuntimeException broken) {
      Thread thread = Thread.currentThread();
      thread.getUncaughtExceptionHandler().uncaughtException(thread, broken);
    }
  }
}
