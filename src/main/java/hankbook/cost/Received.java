package hankbook.cost;

import hankbook.measure.Length;
import hankbook.measure.Mass;
import hankbook.yarn.Skein;
import hankbook.yarn.Weighing;
import java.math.RoundingMode;
import java.util.Optional;

/**
 * How much of a skein was received, as far as it is known.
 *
 * @param label the length printed on it, over zero
 * @param length the length that came, over zero
 * @param mass of the yarn alone, over zero
 */
public record Received(Optional<Length> label, Optional<Length> length, Optional<Mass> mass) {
  public Received {
    label = label.filter(Length::isPositive);
    length = length.filter(Length::isPositive);
    mass = mass.filter(known -> known.milligrams() > 0);
  }

  /**
   * As a skein was written down.
   *
   * @param entered the length that the ledger received of it; zero where it received none
   */
  public static Received of(Skein skein, Length entered) {
    Optional<Length> length = Optional.of(entered).filter(Length::isPositive).or(() -> skein.measurement().length());
    Optional<Mass> weighed = skein.weighing().map(Weighing::net).filter(net -> net.milligrams() > 0);
    Optional<Length> sold = skein.label().or(() -> length);
    return new Received(skein.label(), length, weighed.or(() -> skein.knownGrist().flatMap(grist -> sold.map(metres -> grist.massOf(metres, RoundingMode.HALF_UP)))));
  }
}
