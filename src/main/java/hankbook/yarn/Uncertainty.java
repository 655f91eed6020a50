package hankbook.yarn;

import hankbook.measure.Length;
import hankbook.measure.Mass;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * How surely the metres of some skeins are known: combined standard uncertainty after JCGM 100:2008, where independent parts add as
 * squares and the grist error that the skeins of one lot share adds linearly first.
 *
 * <p>A label's uncertainty is the tolerable negative error of Council Directive 76/211/EEC, Annex I 2.4, taken as a rectangular
 * half-width. The 2 % of an unmeasured grist, the 3 % of a bare length and the balance of 1 g are common practice, as defaults.
 */
public final class Uncertainty {
  private static final double GRIST = 0.02;
  private static final double BARE_LENGTH = 0.03;
  private static final double BALANCE_DIVISION_MILLIGRAMS = 1_000;

  private Uncertainty() {}

  /** Combined standard uncertainty of the metres of these skeins. */
  public static Length of(List<Skein> skeins) {
    double squares = 0;
    Map<String, Double> gristByLot = new HashMap<>();
    for (Skein skein : skeins) {
      if (skein.holds().isZero()) {
        continue;
      }
      double own = own(skein);
      squares += own * own;
      String lot = skein.lot().isEmpty() ? "skein " + skein.code() : "lot " + skein.yarn() + " " + skein.lot();
      gristByLot.merge(lot, ofGrist(skein.measurement()), Double::sum);
    }
    double shared = gristByLot.values().stream().mapToDouble(error -> error * error).sum();
    return new Length(Math.round(Math.sqrt(squares + shared)));
  }

  /** In tenths of a millimetre. What was taken from it since left the error of the first measurement in what remains. */
  private static double own(Skein skein) {
    return switch (skein.measurement()) {
      case Measurement.ByLabel label -> label.printed().tenthsOfMillimetre() * label.nominal().map(Uncertainty::ofLabel).orElse(BARE_LENGTH);
      case Measurement.ByWeight weight ->
          Math.sqrt(2) * BALANCE_DIVISION_MILLIGRAMS / Math.sqrt(12) * 10_000 / weight.grist().tex().doubleValue();
      case Measurement.Unmeasured none -> skein.holds().tenthsOfMillimetre() * BARE_LENGTH;
    };
  }

  private static double ofGrist(Measurement measurement) {
    return measurement instanceof Measurement.ByWeight weight
        ? weight.length().orElseThrow().tenthsOfMillimetre() * GRIST
        : 0;
  }

  /** The label's relative standard uncertainty for a nominal mass; the directive's table, its ends carried on. */
  private static double ofLabel(Mass nominal) {
    double grams = nominal.milligrams() / 1000.0;
    return tolerableErrorGrams(grams) / grams / Math.sqrt(3);
  }

  private static double tolerableErrorGrams(double grams) {
    if (grams <= 50) {
      return 0.09 * grams;
    } else if (grams <= 100) {
      return 4.5;
    } else if (grams <= 200) {
      return 0.045 * grams;
    } else if (grams <= 300) {
      return 9;
    } else if (grams <= 500) {
      return 0.03 * grams;
    }
    return grams <= 1000 ? 15 : 0.015 * grams;
  }
}
