package hankbook.desktop.find;

import hankbook.desktop.say.Say;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.concurrent.Executor;
import java.util.concurrent.atomic.AtomicLong;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.function.Supplier;
import javafx.beans.property.ReadOnlyBooleanProperty;
import javafx.beans.property.ReadOnlyBooleanWrapper;
import javafx.beans.property.ReadOnlyIntegerProperty;
import javafx.beans.property.ReadOnlyIntegerWrapper;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.SimpleStringProperty;
import javafx.beans.property.StringProperty;

/** Finding anything: what was typed, what answers to it, and which of that is chosen. */
public final class FindModel {
  /** Does an errand away from the screen, then tells its answer, or what went wrong, to the screen. */
  public interface Errands {
    /** Sends one. */
    void run(Callable<List<Thing>> errand, Consumer<List<Thing>> then, Consumer<Exception> otherwise);
  }

  private static final int MOST_OF_A_SORT = 6;

  private final Supplier<List<Thing>> always;
  private final Supplier<List<Thing>> kept;
  private final Function<String, List<Thing>> named;
  private final Executor away;
  private final Executor here;
  private final Errands errands;
  private final AtomicLong asked = new AtomicLong();
  private final StringProperty typed = new SimpleStringProperty("");
  private final ReadOnlyBooleanWrapper open = new ReadOnlyBooleanWrapper(false);
  private final ReadOnlyObjectWrapper<List<Thing>> found = new ReadOnlyObjectWrapper<>(List.of());
  private final ReadOnlyIntegerWrapper chosen = new ReadOnlyIntegerWrapper(-1);
  private final ReadOnlyObjectWrapper<String> trouble = new ReadOnlyObjectWrapper<>("");
  private List<Thing> things = List.of();
  private long opened;

  /**
   * @param always acts and screens, which are there at once
   * @param kept everything else, which the ledger is asked for away from the screen each time the box opens
   * @param named what a typed text names outright, such as the number of an entry
   * @param errands how the ledger is asked
   */
  public FindModel(Supplier<List<Thing>> always, Supplier<List<Thing>> kept, Function<String, List<Thing>> named, Errands errands, Executor away, Executor here) {
    this.always = always;
    this.kept = kept;
    this.named = named;
    this.errands = errands;
    this.away = away;
    this.here = here;
    typed.subscribe(_ -> look());
  }

  /** What was typed. */
  public StringProperty typedProperty() {
    return typed;
  }

  /** Whether it is asked for at all. */
  public ReadOnlyBooleanProperty openProperty() {
    return open.getReadOnlyProperty();
  }

  /** What answers, best first, sorts together. */
  public ReadOnlyObjectProperty<List<Thing>> foundProperty() {
    return found.getReadOnlyProperty();
  }

  /** Which of it is chosen; under zero while there is none. */
  public ReadOnlyIntegerProperty chosenProperty() {
    return chosen.getReadOnlyProperty();
  }

  /** What went wrong, or empty. */
  public ReadOnlyObjectProperty<String> troubleProperty() {
    return trouble.getReadOnlyProperty();
  }

  /** Opens with nothing typed. */
  public void open() {
    things = always.get();
    trouble.set("");
    typed.set("");
    open.set(true);
    look();
    long mine = ++opened;
    errands.run(kept::get, more -> gathered(mine, more), _ -> failed(mine));
  }

  private void gathered(long opening, List<Thing> more) {
    if (opening == opened) {
      List<Thing> all = new ArrayList<>(always.get());
      all.addAll(more);
      things = List.copyOf(all);
      look();
    }
  }

  private void failed(long opening) {
    if (opening == opened) {
      trouble.set(Say.text("The ledger does not answer, so only screens and acts are found."));
    }
  }

  /** Closes without going anywhere. */
  public void close() {
    asked.incrementAndGet();
    open.set(false);
  }

  private void look() {
    long mine = asked.incrementAndGet();
    String now = typed.get().strip();
    if (!open.get()) {
      return;
    }
    if (now.isEmpty()) {
      show(mine, always.get());
    } else {
      List<Thing> among = new ArrayList<>(things);
      among.addAll(named.apply(now));
      away.execute(() -> {
        List<Thing> best = asked.get() == mine ? Ranking.best(among, now, MOST_OF_A_SORT) : List.of();
        here.execute(() -> show(mine, best));
      });
    }
  }

  private void show(long mine, List<Thing> best) {
    if (asked.get() == mine) {
      chosen.set(-1);
      found.set(best);
      chosen.set(best.isEmpty() ? -1 : 0);
    }
  }

  /** Chooses the next, or with -1 the one before; it goes round. */
  public void move(int by) {
    int size = found.get().size();
    if (size > 0) {
      chosen.set(Math.floorMod(chosen.get() + by, size));
    }
  }

  /** Goes to what is chosen. */
  public void go() {
    if (chosen.get() >= 0) {
      go(found.get().get(chosen.get()));
    }
  }

  /** Goes to one thing. */
  public void go(Thing thing) {
    close();
    thing.open().run();
  }
}
