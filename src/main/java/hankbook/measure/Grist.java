package hankbook.measure;

import java.math.RoundingMode;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * How heavy a yarn is for its length (linear density), exactly, in tex: grams to the kilometre.
 *
 * @param tex over zero
 */
public record Grist(BigFraction tex) implements Comparable<Grist> {
  private static final int TENTHS_PER_METRE = 10_000;

  public Grist {
    if (tex.signum() <= 0) {
      throw new Unreadable(Exact.plain(tex, 6) + " tex", "a grist over zero");
    }
  }

  /** The length a mass of this yarn has, rounded to a tenth of a millimetre as told: one tex is one milligram to the metre. */
  public Length lengthOf(Mass mass, RoundingMode rounding) {
    return Length.ofTenths(BigFraction.of(mass.milligrams()).multiply(TENTHS_PER_METRE).divide(tex), rounding);
  }

  /** The mass a length of this yarn has, rounded to a milligram as told. */
  public Mass massOf(Length length, RoundingMode rounding) {
    return new Mass(Exact.whole(length.exactTenths().multiply(tex).divide(TENTHS_PER_METRE), rounding));
  }

  /** The grist of threads that lie together as one: their grists add. */
  public Grist with(Grist other) {
    return new Grist(tex.add(other.tex));
  }

  /** The grist of so many of this yarn lying together, at least 1. */
  public Grist times(int strands) {
    return new Grist(tex.multiply(strands));
  }

  /** How many yards weigh a pound, exactly. */
  public BigFraction yardsPerPound() {
    return NumberingSystem.YARDS_PER_POUND.grist(BigFraction.ONE).tex.divide(tex);
  }

  @Override
  public int compareTo(Grist other) {
    return tex.compareTo(other.tex);
  }

  /** In tex, to three places. */
  @Override
  public String toString() {
    return Exact.plain(tex, 3) + " tex";
  }
}
