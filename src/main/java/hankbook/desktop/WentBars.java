package hankbook.desktop;

import hankbook.measure.Length;
import hankbook.reckon.Cause;
import hankbook.reckon.Reckoning;
import hankbook.reckon.YarnAccount;
import hankbook.yarn.YarnColour;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * The way from what was planned to what was used, and the scale on which it is drawn.
 *
 * @param planned where it begins
 * @param steps that change anything, in their order
 * @param used where it ends
 */
record WentBars(Length planned, List<YarnAccount.Step> steps, Length used) {
  /** Below this part of the whole, a scale that does not begin at nothing is not worth its explanation. */
  private static final double LEAST_BEGINNING = 0.3;

  private static final double ROOM = 0.4;

  WentBars {
    steps = List.copyOf(steps);
  }

  /** Of one yarn; of all together where none is named, or the reckoning has none of it. */
  static WentBars of(Reckoning reckoning, Optional<YarnColour> yarn) {
    return yarn.flatMap(named -> reckoning.yarns().stream().filter(account -> account.yarn().equals(named)).findFirst())
        .map(account -> new WentBars(account.planned(), account.steps(), account.used()))
        .orElseGet(() -> all(reckoning));
  }

  private static WentBars all(Reckoning reckoning) {
    List<YarnAccount.Step> steps = new ArrayList<>();
    Length reached = reckoning.planned();
    for (Cause cause : Cause.values()) {
      Length next = reached.plus(reckoning.part(cause));
      if (!next.equals(reached)) {
        steps.add(new YarnAccount.Step(cause, reached, next));
      }
      reached = next;
    }
    return new WentBars(reckoning.planned(), steps, reckoning.used());
  }

  private Stream<Length> reached() {
    return Stream.concat(Stream.of(planned, used), steps.stream().map(YarnAccount.Step::after));
  }

  /** Where the scale begins: at nothing, unless the steps would be too small to be seen then. */
  Length beginning() {
    long least = reached().mapToLong(Length::tenthsOfMillimetre).min().orElse(0);
    long most = most().tenthsOfMillimetre();
    long begin = Math.round(least - ROOM * (most - least));
    return least == most || begin < LEAST_BEGINNING * most ? Length.ZERO : new Length(begin);
  }

  private Length most() {
    return reached().reduce(Length.ZERO, Length::max);
  }

  /** Where a length stands on the scale, from 0 to 1. */
  double place(Length length) {
    double whole = most().minus(beginning()).tenthsOfMillimetre();
    return whole == 0 ? 0 : Math.clamp(length.minus(beginning()).tenthsOfMillimetre() / whole, 0, 1);
  }
}
