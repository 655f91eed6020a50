package hankbook.reckon;

import hankbook.measure.Length;
import hankbook.plan.Making;
import hankbook.yarn.YarnColour;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * Puts what was found in the place of what was planned, one thing after the other, and reckons each time what that takes of each yarn: the differences are the
 * parts of the causes, and sum to what lies between the first and the last.
 */
final class Substitution {
  private final Map<Cause, Map<YarnColour, Length>> takes = new EnumMap<>(Cause.class);
  private final Map<YarnColour, Length> planned;
  private final Made made;
  private Making reached;

  Substitution(Made made, Realised really) {
    this.made = made;
    Making asPlanned = Making.of(made.plan());
    planned = use(asPlanned);
    reached = asPlanned;
    found(Cause.ENDS, reached.withEnds(made.actuals().warp().ends().orElse(reached.ends())));
    lengths(asPlanned, really);
    found(Cause.REPAIRS, made.actuals().warp().broken().isPresent() ? reached.withRepairs(made.actuals().warp().broken().getAsInt()) : reached);
    found(Cause.WEFT_COUNT, made.actuals().cloth().picks().isPresent() ? reached.withPicks(made.actuals().cloth().picks().getAsLong()) : reached);
    found(Cause.WEFT_WIDTH, made.actuals().warp().widthInReed().filter(width -> !width.equals(recorded(reached.inReed()))).map(this::inReed).orElse(reached));
  }

  /** What was planned of a yarn. */
  Length planned(YarnColour yarn) {
    return planned.getOrDefault(yarn, Length.ZERO);
  }

  /** What each cause adds of a yarn, and what is left to get from all of them to what was used. */
  Map<Cause, Length> causes(YarnColour yarn, Length used, Length uncertainty) {
    Map<Cause, Length> causes = new EnumMap<>(Cause.class);
    Length before = planned(yarn);
    for (Map.Entry<Cause, Map<YarnColour, Length>> step : takes.entrySet()) {
      Length after = step.getValue().getOrDefault(yarn, Length.ZERO);
      causes.put(step.getKey(), after.minus(before));
      before = after;
    }
    Length rest = used.minus(before);
    Length within = uncertainty.times(2);
    causes.put(Cause.MEASUREMENT, Length.max(within.negated(), Length.min(within, rest)));
    causes.put(Cause.UNEXPLAINED, rest.minus(Length.max(within.negated(), Length.min(within, rest))));
    return causes;
  }

  private void lengths(Making asPlanned, Realised really) {
    Making warp = reached;
    Stretches plan = Stretches.planned(asPlanned);
    Stretches found = new Measures(made, really, plan).found();
    List<Stretches> steps = new ArrayList<>(List.of(plan.withCloth(found.finished(), found.beside())));
    steps.add(steps.getLast().withRemaining(found.remaining()));
    steps.add(steps.getLast().withTakenUp(found.takenUp()));
    steps.add(steps.getLast().withSampling(found.sampling()));
    steps.add(steps.getLast().withLoomWaste(found.loomWaste()));
    List<Cause> causes = List.of(Cause.WARP_LENGTH, Cause.SHRINKAGE, Cause.TAKE_UP, Cause.SAMPLING, Cause.LOOM_WASTE);
    for (int i = 0; i < causes.size(); i++) {
      Stretches step = steps.get(i);
      // A warp whose length was not measured is as long as planned: it was wound before anything of the rest could show.
      Making wound = WarpWays.wound(made).isPresent() ? warp.withLength(step.length()) : warp;
      found(causes.get(i), wound.withCloth(step.offLoom(), step.sampled()));
    }
  }

  private Making inReed(Length width) {
    return reached.withReed(width.exactTenths());
  }

  private void found(Cause cause, Making making) {
    reached = making;
    takes.put(cause, use(making));
  }

  private static Length recorded(BigFraction tenths) {
    return Length.ofTenths(tenths, RoundingMode.HALF_UP);
  }

  private static Map<YarnColour, Length> use(Making making) {
    Map<YarnColour, Length> use = new HashMap<>();
    making.needs().forEach(need -> use.merge(need.yarn(), need.length(), Length::plus));
    return use;
  }
}
