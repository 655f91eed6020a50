package hankbook.reckon;

import hankbook.measure.Length;
import hankbook.measure.Phrase;
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
    Phrase where = atTheFell ? Phrase.of("at the fell") : Phrase.of("off the loom");
    Map<Way, Found<BigFraction>> ways = new EnumMap<>(Way.class);
    lost(woven, where, actuals.warp().widthInReed(), Phrase.of("in the reed")).ifPresent(found -> ways.put(Way.DRAW_IN, found));
    lost(cloth.lengthFinished(), Phrase.of("finished"), cloth.lengthOffLoom(), Phrase.of("off the loom")).ifPresent(found -> ways.put(Way.LENGTH_SHRINKAGE, found));
    lost(cloth.widthFinished(), Phrase.of("finished"), woven, where).ifPresent(found -> ways.put(Way.WIDTH_SHRINKAGE, found));
    return ways;
  }

  private static Optional<Found<BigFraction>> lost(Optional<Length> smaller, Phrase at, Optional<Length> larger, Phrase from) {
    if (smaller.isEmpty() || larger.isEmpty()) {
      return Optional.empty();
    }
    BigFraction part = BigFraction.ONE.subtract(smaller.get().exactTenths().divide(larger.get().exactTenths()));
    return Optional.of(new Found<>(part, Phrase.of("{0} {1} and {2} {3}", fine(larger.get()), from, fine(smaller.get()), at)));
  }

  /** Widths, and lengths of cloth, which are shown finely. */
  private static Phrase.Width fine(Length length) {
    return new Phrase.Width(length, length.toString());
  }
}
