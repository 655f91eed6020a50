package hankbook.desktop;

import java.util.List;
import java.util.OptionalInt;
import javafx.beans.property.ReadOnlyIntegerProperty;
import javafx.beans.property.ReadOnlyIntegerWrapper;

/** How large everything in the window is shown, in hundredths of its own size. It is remembered from one start to the next. */
public final class Enlargement {
  /** The sizes that are offered, the smallest first. */
  static final List<Integer> STEPS = List.of(100, 110, 125, 150, 175, 200);

  private static final int OWN_SIZE = 100;
  private static final String KEY = "size of everything";

  private final Remembered remembered;
  private final ReadOnlyIntegerWrapper percent;

  /** As large as it was left. */
  Enlargement(Remembered remembered) {
    this.remembered = remembered;
    percent = new ReadOnlyIntegerWrapper(nearest(remembered.get(KEY, Integer.class).orElse(OWN_SIZE)));
  }

  /** In hundredths; always one of the sizes that are offered. */
  ReadOnlyIntegerProperty percentProperty() {
    return percent.getReadOnlyProperty();
  }

  /** How many times its own size. */
  double times() {
    return (double) percent.get() / OWN_SIZE;
  }

  /** Shows everything at one of the sizes that are offered, or the one nearest to it. */
  void set(int wanted) {
    percent.set(nearest(wanted));
    remembered.put(KEY, percent.get());
  }

  /** Shows everything one size larger, up to the largest. */
  void larger() {
    STEPS.stream().filter(step -> step > percent.get()).findFirst().ifPresent(this::set);
  }

  /** Shows everything one size smaller, down to its own. */
  void smaller() {
    OptionalInt below = STEPS.stream().mapToInt(step -> step).filter(step -> step < percent.get()).max();
    below.ifPresent(this::set);
  }

  /** Shows everything at its own size. */
  void ownSize() {
    set(OWN_SIZE);
  }

  private static int nearest(int wanted) {
    int best = OWN_SIZE;
    for (int step : STEPS) {
      best = Math.abs((long) step - wanted) < Math.abs((long) best - wanted) ? step : best;
    }
    return best;
  }
}
