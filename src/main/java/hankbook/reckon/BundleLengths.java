package hankbook.reckon;

import hankbook.measure.Grist;
import hankbook.measure.Length;
import hankbook.measure.Mass;
import hankbook.plan.Apportionment;
import hankbook.yarn.YarnColour;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * How much of each yarn is in bundles: a mass by the yarn's grist, and a bundle of the whole warp as its yarns lie in that warp.
 *
 * @param plan its name, for a refusal
 * @param grists of the yarns, where they are known
 * @param warp how much of each yarn that was used lies in the warp; each over zero
 */
record BundleLengths(String plan, Map<YarnColour, Grist> grists, Map<YarnColour, Length> warp) {
  /** By yarn, to the tenth of a millimetre; a bundle of the warp is shared by largest remainder. */
  Map<YarnColour, Length> of(List<Bundle> bundles) {
    Map<YarnColour, Length> lengths = new LinkedHashMap<>();
    for (Bundle bundle : bundles) {
      if (bundle.yarn().isPresent()) {
        YarnColour yarn = bundle.yarn().get();
        lengths.merge(yarn, length(bundle.amount(), Map.of(yarn, Length.metres(1))), Length::plus);
      } else {
        ofTheWarp(bundle.amount()).forEach((yarn, length) -> lengths.merge(yarn, length, Length::plus));
      }
    }
    return lengths;
  }

  private Map<YarnColour, Length> ofTheWarp(Bundle.Amount amount) {
    if (warp.isEmpty()) {
      throw new Refusing(new Unsquared.NoWarpInIt(plan));
    }
    return shared(length(amount, warp), warp);
  }

  /** Of an amount in which yarns lie as these lengths do. */
  private Length length(Bundle.Amount amount, Map<YarnColour, Length> together) {
    return switch (amount) {
      case Bundle.Amount.OfLength(Length length) -> length;
      case Bundle.Amount.OfMass(Mass mass) -> new Grist(meanTex(together)).lengthOf(mass, RoundingMode.HALF_UP);
    };
  }

  private BigFraction meanTex(Map<YarnColour, Length> together) {
    BigFraction mass = BigFraction.ZERO;
    BigFraction length = BigFraction.ZERO;
    for (Map.Entry<YarnColour, Length> yarn : together.entrySet()) {
      Grist grist = grists.get(yarn.getKey());
      if (grist == null) {
        throw new Refusing(new Unsquared.NoGrist(yarn.getKey()));
      }
      mass = mass.add(grist.tex().multiply(yarn.getValue().exactTenths()));
      length = length.add(yarn.getValue().exactTenths());
    }
    return mass.divide(length);
  }

  /** Shares a length out in proportion to others, by largest remainder; none of the others is negative, and they sum to more than zero. */
  static <K> Map<K, Length> shared(Length whole, Map<K, Length> weights) {
    BigFraction all = weights.values().stream().map(Length::exactTenths).reduce(BigFraction.ZERO, BigFraction::add);
    List<K> keys = new ArrayList<>(weights.keySet());
    List<Long> parts = Apportionment.of(whole.tenthsOfMillimetre(), weights.values().stream().map(weight -> weight.exactTenths().divide(all)).toList(), "a bundle");
    Map<K, Length> shared = new LinkedHashMap<>();
    for (int i = 0; i < keys.size(); i++) {
      shared.put(keys.get(i), new Length(parts.get(i)));
    }
    return shared;
  }
}
