package hankbook.desktop;

import javafx.beans.property.BooleanProperty;

/** Remembers whether something is switched on. */
final class RememberedSwitch {
  private final Remembered remembered;
  private final String key;
  private final BooleanProperty on;
  private boolean restored;

  RememberedSwitch(Remembered remembered, String key, BooleanProperty on) {
    this.remembered = remembered;
    this.key = key;
    this.on = on;
    on.subscribe((_, now) -> remembered.put(key, now));
  }

  /** Switches it as it was left; only the first time, so that what it leads to is not done before it is looked at. */
  void restore() {
    if (!restored) {
      restored = true;
      remembered.get(key, Boolean.class).ifPresent(on::set);
    }
  }
}
