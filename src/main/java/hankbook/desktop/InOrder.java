package hankbook.desktop;

import java.util.ArrayDeque;
import java.util.Optional;
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
    start();
  }

  /** An executor that refuses must not leave the rest waiting for a hand that never comes. */
  private void start() {
    boolean taken = false;
    try {
      executor.execute(this::runAll);
      taken = true;
    } finally {
      if (!taken) {
        rest();
      }
    }
  }

  private void runAll() {
    boolean broken = true;
    try {
      for (Optional<Runnable> next = next(); next.isPresent(); next = next()) {
        runOne(next.get());
      }
      broken = false;
    } finally {
      if (broken) {
        rest();
      }
    }
  }

  private Optional<Runnable> next() {
    synchronized (waiting) {
      running = !waiting.isEmpty();
      return Optional.ofNullable(waiting.poll());
    }
  }

  private void rest() {
    synchronized (waiting) {
      running = false;
    }
  }

  /** One that breaks must not keep the others waiting for ever. */
  private static void runOne(Runnable next) {
    try {
      next.run();
    } catch (Throwable broken) {
      Thread thread = Thread.currentThread();
      thread.getUncaughtExceptionHandler().uncaughtException(thread, broken);
    }
  }
}
