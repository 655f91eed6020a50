package hankbook.reckon;

import hankbook.measure.Length;
import hankbook.measure.Phrase;
import hankbook.plan.Making;
import hankbook.plan.WorkKind;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * The ways of cloth and loom as they really were, as far as what was measured tells them.
 *
 * @param ways each as a part, exactly; a little under zero where measuring made it so
 * @param loomWaste of the warp's length what could not be woven
 * @param sampling of the warp's length what went into sampling
 * @param times for one end, pick or piece
 * @param unlikely what measurements make that no cloth can be, and that therefore stands nowhere above
 */
public record Realised(
    Map<Way, Found<BigFraction>> ways, Optional<Found<Length>> loomWaste, Optional<Found<Length>> sampling, Map<WorkKind, Found<Duration>> times,
    List<Unlikely> unlikely) {
  public Realised {
    Map<Way, Found<BigFraction>> inOrder = new EnumMap<>(Way.class);
    inOrder.putAll(ways);
    ways = Collections.unmodifiableMap(inOrder);
    Map<WorkKind, Found<Duration>> timesInOrder = new EnumMap<>(WorkKind.class);
    timesInOrder.putAll(times);
    times = Collections.unmodifiableMap(timesInOrder);
    unlikely = List.copyOf(unlikely);
  }

  /**
   * What was really so of a cloth.
   *
   * @throws hankbook.measure.Unreadable if the plan does not add up, or the ends counted are no more than its selvedges
   */
  public static Realised of(Made made) {
    Making making = Making.of(made.plan());
    making = making.withEnds(made.actuals().warp().ends().orElse(making.ends()));
    List<Unlikely> unlikely = new ArrayList<>();
    WarpWays warp = new WarpWays(made, making, unlikely);
    Map<Way, Found<BigFraction>> ways = new EnumMap<>(Way.class);
    take(Way.WARP_TAKE_UP, warp.takeUp(), ways, unlikely);
    ClothWays.all(made.actuals()).forEach((way, found) -> take(way, Optional.of(found), ways, unlikely));
    take(Way.WINDING, YarnWays.winding(made, making), ways, unlikely);
    BigFraction wound = Optional.ofNullable(ways.get(Way.WINDING)).map(Found::value).orElse(made.plan().allowances().winding().fraction());
    take(Way.WEFT_TAKE_UP, YarnWays.weftTakeUp(made, making, wound), ways, unlikely);
    return new Realised(ways, warp.loomWaste(), warp.sampling(), TimesTaken.of(made, making), unlikely);
  }

  /** One of the ways, as a part, where it is known. */
  public Optional<BigFraction> part(Way way) {
    return Optional.ofNullable(ways.get(way)).map(Found::value);
  }

  private static void take(Way way, Optional<Found<BigFraction>> found, Map<Way, Found<BigFraction>> ways, List<Unlikely> unlikely) {
    if (found.isPresent() && way.likely(found.get().value())) {
      ways.put(way, found.get());
    } else {
      found.ifPresent(never -> unlikely.add(new Unlikely(way.words(), new Phrase.Percent(never.value(), 2), way.likely(), never.from())));
    }
  }
}
