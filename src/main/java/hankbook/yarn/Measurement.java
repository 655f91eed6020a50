package hankbook.yarn;

import hankbook.measure.Grist;
import hankbook.measure.Length;
import hankbook.measure.Mass;
import java.math.RoundingMode;
import java.util.Optional;

/** How the length of a skein is known, which stays with it. */
public sealed interface Measurement {
  /** The length, where it is known. */
  Optional<Length> length();

  /** In a word or two, to follow "known by its". */
  String words();

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

    @Override
    public String words() {
      return "label";
    }
  }

  /**
   * Turns counted on a reel.
   *
   * @param turns and the reel
   */
  record ByTurns(Turns turns) implements Measurement {
    @Override
    public Optional<Length> length() {
      return Optional.of(turns.length());
    }

    @Override
    public String words() {
      return "turns";
    }
  }

  /**
   * A weighing: (gross − tare) over the grist.
   *
   * @param weighing on the balance
   * @param net of the yarn alone, at its standard regain
   * @param grist of the yarn
   * @param sample by which the grist is known; empty where it is known by the yarn number
   */
  record ByWeight(Weighing weighing, Mass net, Grist grist, Optional<GristSample> sample) implements Measurement {
    @Override
    public Optional<Length> length() {
      return Optional.of(grist.lengthOf(net, RoundingMode.HALF_UP));
    }

    @Override
    public String words() {
      return "weight";
    }
  }

  /** Neither a length nor what would give one. */
  record Unmeasured() implements Measurement {
    @Override
    public Optional<Length> length() {
      return Optional.empty();
    }

    @Override
    public String words() {
      return "";
    }
  }
}
