package hankbook.yarn;

import hankbook.measure.Length;
import java.util.Optional;

/**
 * What a ledger says of a skein.
 *
 * @param left what there is of it now
 * @param counted what it was taken to hold when it was last measured; empty where only a length was given since
 * @param again what was read off it when it was last measured after it came
 */
public record Kept(Length left, Optional<Length> counted, Optional<Measures> again) {
  /** Of a skein that was not measured since it came. */
  public static Kept of(Length left) {
    return new Kept(left, Optional.empty(), Optional.empty());
  }
}
