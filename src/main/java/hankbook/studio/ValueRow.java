package hankbook.studio;

import hankbook.cost.Worth;
import hankbook.measure.Length;
import hankbook.measure.Mass;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Optional;

/**
 * Some of the stock together.
 *
 * @param name of the group; empty where the skeins say nothing of what it is grouped by
 * @param worth its length and value
 * @param mass of the part whose grist is known
 * @param withoutMass the length whose grist is not known
 */
public record ValueRow(String name, Worth worth, Mass mass, Length withoutMass) {
  /** The value of a metre, to four places; only ever derived. Empty where there is no length. */
  public Optional<BigDecimal> perMetre() {
    return worth.length().isZero()
        ? Optional.empty()
        : Optional.of(worth.cost().getAmount().divide(worth.length().metres(), 4, RoundingMode.HALF_UP));
  }

  ValueRow plus(ValueRow other) {
    return new ValueRow(name, worth.plus(other.worth), new Mass(Math.addExact(mass.milligrams(), other.mass.milligrams())), withoutMass.plus(other.withoutMass));
  }
}
