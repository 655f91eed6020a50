package hankbook.yarn;

import hankbook.measure.Mass;
import hankbook.measure.Unreadable;

/**
 * A skein as it stood on the balance.
 *
 * @param gross with what it is wound on
 * @param tare what it is wound on, at most the gross
 */
public record Weighing(Mass gross, Mass tare) {
  public Weighing {
    if (tare.compareTo(gross) > 0) {
      throw new Unreadable(tare.toString(), "a tare of at most the gross, " + gross);
    }
  }

  /** The yarn alone. */
  public Mass net() {
    return gross.minus(tare);
  }
}
