package hankbook.reckon;

import hankbook.measure.Length;
import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;

/** What became of the width and the length of a cloth: each the smaller state over the larger, taken from one. */
final class ClothWays {
  private ClothWays() {}

  /** Draw-in and both shrinkages, as far as they were measured. Draw-in and shrinkage start and end at the same width, so that the two make the whole. */
  static Map<Way, Found<BigFraction>> all(Actuals actuals) {
    ClothAsWoven cloth = actuals.cloth();
    boolean atTheFell = cloth.widthOnLoom().isPresent();
    Optional<Length> woven = cloth.widthOnLoom().or(cloth::widthOffLoom);
    String where = atTheFell ? " at the fell" : " off the loom";
    Map<Way, Found<BigFraction>> ways = new EnumMap<>(Way.class);
    lost(woven, where, actuals.warp().widthInReed(), " in the reed").ifPresent(found -> ways.put(Way.DRAW_IN, found));
    lost(cloth.lengthFinished(), " finished", cloth.lengthOffLoom(), " off the loom").ifPresent(found -> ways.put(Way.LENGTH_SHRINKAGE, found));
    lost(cloth.widthFinished(), " finished", woven, where).ifPresent(found -> ways.put(Way.WIDTH_SHRINKAGE, found));
    return ways;
  }

  private static Optional<Found<BigFraction>> lost(Optional<Length> smaller, String at, Optional<Length> larger, String from) {
    if (smaller.isEmpty() || larger.isEmpty()) {
      return Optional.empty();
    }
    BigFraction part = BigFraction.ONE.subtract(smaller.get().exactTenths().divide(larger.get().exactTenths()));
    return Optional.of(new Found<>(part, larger.get() + from + " and " + smaller.get() + at));
  }
}
