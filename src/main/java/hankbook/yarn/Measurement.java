package hankbook.yarn;

import hankbook.measure.Grist;
import hankbook.measure.Length;
import hankbook.measure.Mass;
import hankbook.measure.YarnNumber;
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
   * @param weighing on the balance
   * @param grist of the yarn
   */
  record ByWeight(Weighing weighing, Grist grist) implements Measurement {
    @Override
    public Optional<Length> length() {
      return Optional.of(grist.lengthOf(weighing.net(), RoundingMode.HALF_UP));
    }
  }

  /** Neither a length nor what would give one. */
  record Unmeasured() implements Measurement {
    @Override
    public Optional<Length> length() {
      return Optional.empty();
    }
  }

  /** The surest that can be had: a weight with a grist, else a printed length. */
  static Measurement of(Optional<YarnNumber> grist, Optional<Length> printed, Optional<Weighing> weighing) {
    if (weighing.isPresent() && grist.isPresent()) {
      return new ByWeight(weighing.get(), grist.get().grist());
    }
    return printed
        .<Measurement>map(length -> new ByLabel(length, grist.map(number -> nominal(number, length)).filter(mass -> mass.milligrams() > 0)))
        .orElseGet(Unmeasured::new);
  }

  private static Mass nominal(YarnNumber number, Length length) {
    return number.grist().massOf(length, RoundingMode.HALF_UP);
  }
}
