package hankbook.store;

import hankbook.measure.Length;
import hankbook.yarn.Measures;
import java.util.Optional;
import java.util.UUID;

/**
 * A skein measured again after it came.
 *
 * @param skein its code
 * @param entry that put the book right, or beside which it was measured; empty where the book was right
 * @param found all that was on the skein
 * @param measures what was read off it; nothing where only the length was given
 */
public record Remeasurement(String skein, Optional<UUID> entry, Length found, Measures measures) {
  /** Whether it says how the length was found. */
  public boolean saysHow() {
    return measures.turns().isPresent() || measures.weighing().isPresent();
  }
}
