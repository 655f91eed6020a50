package hankbook.desktop.fault;

import java.nio.file.Path;
import java.time.Clock;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Executor;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.Supplier;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;

/** Hears of every fault of the program's own, on whatever thread: it goes into the log, what is typed is put by, and the window says so. */
public final class Faults {
  /** One that comes again with every picture of the screen must not fill the log. */
  private static final int MOST_WRITTEN = 20;

  /**
   * What is said of a fault.
   *
   * @param log the file in which it stands with its trace
   * @param typed the file in which what was typed is put by, where anything was
   * @param report the same as a text to be sent on
   * @param times how many there were since the program started
   */
  public record Told(Path log, Optional<Path> typed, String report, int times) {}

  private final FaultLog log;
  private final PutBy putBy;
  private final Executor here;
  private final Clock clock;
  private final AtomicInteger times = new AtomicInteger();
  private final ReadOnlyObjectWrapper<Optional<Told>> last = new ReadOnlyObjectWrapper<>(Optional.empty());
  private Supplier<Map<String, Map<String, String>>> typed = Map::of;
  private String ledger = "";
  private boolean taken;
  private boolean written;
  private boolean telling;

  /**
   * Hears of nothing yet.
   *
   * @param here where screens may be touched
   */
  public Faults(FaultLog log, Executor here, Clock clock) {
    this.log = log;
    this.putBy = PutBy.beside(log);
    this.here = here;
    this.clock = clock;
  }

  /** The fault that is shown, until it is put away. */
  public ReadOnlyObjectProperty<Optional<Told>> lastProperty() {
    return last.getReadOnlyProperty();
  }

  /** What was put by at a fault. */
  public PutBy putBy() {
    return putBy;
  }

  /**
   * Says what is typed in forms and stands in no ledger.
   *
   * @param address of the ledger that it is meant for
   * @param forms for each form the texts by the names of its fields
   */
  public void typedIs(String address, Supplier<Map<String, Map<String, String>>> forms) {
    ledger = address;
    typed = forms;
  }

  /** What was put by before the program started; empty from the second time on. */
  public Optional<PutBy.Before> takeOnce() {
    boolean first = !taken;
    taken = true;
    return first ? putBy.take(ledger) : Optional.empty();
  }

  /**
   * What was put by since the program started is put aside once all of it was entered.
   *
   * @param halfTyped whether some form still holds what stands in no ledger; that is put by anew then
   */
  public void settle(boolean halfTyped) {
    if (written && halfTyped) {
      putBy.keep(ledger, typed.get());
    } else if (written) {
      putBy.putAside();
      written = false;
    }
  }

  /** One that lies there from before was meant for another ledger, or could not be read; it is not written over. */
  private Optional<Path> keep() {
    Map<String, Map<String, String>> forms = typed.get();
    if (!written && !forms.isEmpty()) {
      putBy.putAside();
    }
    Optional<Path> file = putBy.keep(ledger, forms);
    written |= file.isPresent();
    return file;
  }

  /** Hears of a fault, on any thread. */
  public void tell(Throwable fault) {
    int now = times.incrementAndGet();
    if (now <= MOST_WRITTEN) {
      log.write(Thread.currentThread().getName(), fault);
    }
    here.execute(() -> show(fault, now));
  }

  /** One that arises from telling is in the log, and is not told in its turn. */
  private void show(Throwable fault, int now) {
    if (!telling) {
      telling = true;
      try {
        Optional<Path> file = keep();
        last.set(Optional.of(new Told(log.file(), file, FaultReport.of(clock.instant(), fault), now)));
      } catch (RuntimeException another) {
        log.write("that tells of faults", another);
      } finally {
        telling = false;
      }
    }
  }

  /** The user has read it. */
  public void putAway() {
    last.set(Optional.empty());
  }
}
