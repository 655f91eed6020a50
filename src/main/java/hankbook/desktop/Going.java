package hankbook.desktop;

import hankbook.studio.Progress;
import java.util.concurrent.CancellationException;
import java.util.concurrent.Executor;
import java.util.concurrent.atomic.AtomicBoolean;
import javafx.beans.property.ReadOnlyBooleanProperty;
import javafx.beans.property.ReadOnlyBooleanWrapper;
import javafx.beans.property.ReadOnlyDoubleProperty;
import javafx.beans.property.ReadOnlyDoubleWrapper;

/** One long thing that goes on. It is told of on the thread that does it, and shows itself where screens may be touched. */
final class Going implements Progress {
  private static final double UNKNOWN = -1;

  private final String words;
  private final Executor here;
  private final AtomicBoolean stopped = new AtomicBoolean();
  private final AtomicBoolean telling = new AtomicBoolean();
  private final ReadOnlyDoubleWrapper share = new ReadOnlyDoubleWrapper(UNKNOWN);
  private final ReadOnlyBooleanWrapper stopping = new ReadOnlyBooleanWrapper(false);
  private volatile double reached = UNKNOWN;

  Going(String words, Executor here) {
    this.words = words;
    this.here = here;
  }

  /** What goes on, as a sentence. */
  String words() {
    return words;
  }

  /** How much of it is done, from 0 to 1, or less than 0 while that is not known. */
  ReadOnlyDoubleProperty shareProperty() {
    return share.getReadOnlyProperty();
  }

  /** Whether it was asked to stop. */
  ReadOnlyBooleanProperty stoppingProperty() {
    return stopping.getReadOnlyProperty();
  }

  /** Asks it to stop; it does so the next time it says how far it is, unless it is done before. */
  void stop() {
    stopped.set(true);
    stopping.set(true);
  }

  @Override
  public void at(long done, long all) {
    if (stopped.get()) {
      throw new CancellationException(words);
    }
    reached = all <= 0 ? UNKNOWN : Math.clamp((double) done / all, 0, 1);
    if (telling.compareAndSet(false, true)) {
      here.execute(this::show);
    }
  }

  private void show() {
    telling.set(false);
    share.set(reached);
  }
}
