package hankbook.reckon;

import hankbook.measure.Length;
import hankbook.measure.Mass;
import hankbook.measure.Unreadable;
import hankbook.yarn.YarnColour;
import java.util.Optional;

/**
 * A bundle of thrums, or of yarn used up in a sample.
 *
 * @param yarn of which yarn; empty where all the yarns of the warp are in it as they lie in the warp
 * @param amount how much yarn it is
 */
public record Bundle(Optional<YarnColour> yarn, Amount amount) {
  /** How much yarn, by its length or by its weight. */
  public sealed interface Amount {
    /** So many metres of thread in all, at least zero. */
    record OfLength(Length length) implements Amount {
      public OfLength {
        if (length.isNegative()) {
          throw new Unreadable(length.toString(), "a length of at least zero");
        }
      }
    }

    /** So many grams, at least zero. */
    record OfMass(Mass mass) implements Amount {
      public OfMass {
        if (mass.milligrams() < 0) {
          throw new Unreadable(mass.toString(), "a mass of at least zero");
        }
      }
    }
  }
}
