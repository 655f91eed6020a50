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
 * @param rewound whether yarn was wound onto it then, so that how it was measured before says nothing of it any more
 */
public record Remeasurement(String skein, Optional<UUID> entry, Length found, Measures measures, boolean rewound) {
  /** One of a skein onto which nothing was wound. */
  public Remeasurement(String skein, Optional<UUID> entry, Length found, Measures measures) {
    this(skein, entry, found, measures, false);
  }

  /** Whether it says how the length was found. */
  public boolean saysHow() {
    return measures.turns().isPresent() || measures.weighing().isPresent();
  }
}
