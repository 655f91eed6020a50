package hankbook.yarn;

import hankbook.measure.Grist;
import hankbook.measure.Length;
import hankbook.measure.Mass;
import hankbook.measure.Unreadable;
import java.math.RoundingMode;
import java.util.Optional;

/** How the length of a skein is known, which stays with it. */
public sealed interface Measurement {
  /** The length, where it is known. */
  Optional<Length> length();

  /**
   * A length printed on the label.
   *
   * @param printed the length
   * @param nominal the mass it stands for, where the grist is known
   */
  record ByLabel(Length printed, Optional<Mass> nominal) implements Measurement {
    @Override
    public Optional<Length> length() {
      return Optional.of(printed);
    }
  }

  /**
   * A weighing: (gross − tare) over the grist.
   *
   * @param gross with what it is wound on
   * @param tare what it is wound on, at most the gross
   * @param grist of the yarn
   */
  record ByWeight(Mass gross, Mass tare, Grist grist) implements Measurement {
    public ByWeight {
      if (tare.compareTo(gross) > 0) {
        throw new Unreadable(tare.toString(), "a tare of at most the gross, " + gross);
      }
    }

    @Override
    public Optional<Length> length() {
      return Optional.of(grist.lengthOf(gross.minus(tare), RoundingMode.HALF_UP));
    }
  }

  /** Neither a length nor what would give one. */
  record Unmeasured() implements Measurement {
    @Override
    public Optional<Length> length() {
      return Optional.empty();
    }
  }
}
