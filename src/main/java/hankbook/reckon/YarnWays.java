package hankbook.reckon;

import hankbook.measure.Length;
import hankbook.measure.Phrase;
import hankbook.plan.Making;
import hankbook.yarn.YarnColour;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import org.apache.commons.numbers.fraction.BigFraction;

/** What is known of winding and of the weft's take-up only by the yarn that was used. Yarns that were never taken, since another stood in, tell nothing. */
final class YarnWays {
  private YarnWays() {}

  /** Yarn used over what lies in the warp, less one, of the yarns that are in the warp alone. */
  static Optional<Found<BigFraction>> winding(Made made, Making making) {
    Set<YarnColour> wefts = making.crossed().keySet();
    Making mended = mended(made, making);
    Map<YarnColour, Long> strands = mended.strands();
    List<YarnUsed> warps = made.used().stream().filter(used -> used.used().isPositive() && strands.containsKey(used.yarn()) && !wefts.contains(used.yarn())).toList();
    long threads = warps.stream().mapToLong(used -> strands.getOrDefault(used.yarn(), 0L)).sum();
    if (threads == 0) {
      return Optional.empty();
    }
    return WarpWays.wound(made).map(length -> {
      Length used = sum(warps);
      Phrase from = made.actuals().warp().broken().isEmpty()
          ? Phrase.of("{0} used for {1} threads of {2}", used, threads, length)
          : Phrase.of("{0} used for {1} threads of {2}, mended ends with them", used, threads, length);
      return new Found<>(used.exactTenths().divide(length.exactTenths().multiply(threads)).subtract(BigFraction.ONE), from);
    });
  }

  /**
   * Yarn used over the reed's width that it crossed, less one, of the yarns that are weft alone; without any, of those whose share of the warp can be told.
   *
   * @param wound what winding took of the warp, as a part
   */
  static Optional<Found<BigFraction>> weftTakeUp(Made made, Making making, BigFraction wound) {
    if (made.actuals().cloth().picks().isEmpty() || made.actuals().warp().widthInReed().isEmpty()) {
      return Optional.empty();
    }
    Length reed = made.actuals().warp().widthInReed().get();
    long picks = made.actuals().cloth().picks().getAsLong();
    Map<YarnColour, BigFraction> crossed = making.withReed(reed.exactTenths()).withPicks(picks).crossed();
    Map<YarnColour, Long> strands = mended(made, making).strands();
    Phrase.Width across = new Phrase.Width(reed, reed.toString());
    List<YarnUsed> wefts = made.used().stream().filter(used -> used.used().isPositive() && crossed.containsKey(used.yarn())).toList();
    List<YarnUsed> alone = wefts.stream().filter(used -> !strands.containsKey(used.yarn())).toList();
    if (!alone.isEmpty()) {
      return over(sum(alone).exactTenths(), alone, crossed, Phrase.of("{0} used as weft of {1} picks across {2}", sum(alone), picks, across));
    }
    return WarpWays.wound(made).flatMap(length -> {
      long threads = wefts.stream().mapToLong(used -> strands.getOrDefault(used.yarn(), 0L)).sum();
      BigFraction inWarp = length.exactTenths().multiply(threads).multiply(BigFraction.ONE.add(wound));
      Phrase from = Phrase.of("{0} used as weft and as {1} threads of warp of {2}, wound with {3} more, of {4} picks across {5}",
          sum(wefts), threads, length, new Phrase.Percent(wound, 2), picks, across);
      return over(sum(wefts).exactTenths().subtract(inWarp), wefts, crossed, from);
    });
  }

  private static Optional<Found<BigFraction>> over(BigFraction used, List<YarnUsed> wefts, Map<YarnColour, BigFraction> crossed, Phrase from) {
    BigFraction reed = wefts.stream().map(weft -> crossed.getOrDefault(weft.yarn(), BigFraction.ZERO)).reduce(BigFraction.ZERO, BigFraction::add);
    return reed.signum() == 0 ? Optional.empty() : Optional.of(new Found<>(used.divide(reed).subtract(BigFraction.ONE), from));
  }

  /** With the ends that broke, each mended with an end of spare yarn; where they were not counted, with those that were planned. */
  private static Making mended(Made made, Making making) {
    OptionalInt broken = made.actuals().warp().broken();
    return broken.isEmpty() ? making : making.withRepairs(broken.getAsInt());
  }

  private static Length sum(List<YarnUsed> yarns) {
    return yarns.stream().map(YarnUsed::used).reduce(Length.ZERO, Length::plus);
  }
}
