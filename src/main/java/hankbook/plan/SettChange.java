package hankbook.plan;

import hankbook.measure.Length;
import hankbook.measure.Sett;
import hankbook.yarn.YarnColour;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * A warp that was beamed already and is sleyed again to another sett: the ends stay, and the width moves. Both widths are reckoned from
 * the ends, so that the one can be held against the other.
 *
 * @param ends all ends, selvedges included
 * @param before as it was sleyed
 * @param after as it will be
 * @param wefts what each weft yarn takes, in the plan's order
 */
public record SettChange(int ends, State before, State after, List<WeftChange> wefts) {
  /**
   * The warp at one sett.
   *
   * @param sett ends to a unit of width
   * @param inReed width in the reed
   * @param finished width of the finished cloth
   */
  public record State(Sett sett, Length inReed, Length finished) {}

  /** What one yarn takes as weft at the one sett and at the other. */
  public record WeftChange(YarnColour yarn, Length before, Length after) {
    /** How much more; under zero where it is less. */
    public Length more() {
      return after.minus(before);
    }
  }

  public SettChange {
    wefts = List.copyOf(wefts);
  }

  /**
   * What another sett does to a plan.
   *
   * @throws hankbook.measure.Unreadable if the plan does not add up
   */
  public static SettChange of(Plan plan, Sett sett) {
    Yardage planned = Yardage.of(plan);
    Plan beamed = beamed(plan, planned, plan.warp().sett());
    Plan resleyed = beamed(plan, planned, sett);
    Yardage before = Yardage.of(beamed);
    Yardage after = Yardage.of(resleyed);
    return new SettChange(before.width().ends(), state(beamed, before), state(resleyed, after), wefts(before, after));
  }

  /** As many ends, as long as planned, in the order they have: only the sett is another. */
  private static Plan beamed(Plan plan, Yardage planned, Sett sett) {
    return plan.withWarp(plan.warp().withEnds(planned.width().ends()).withLength(Optional.of(planned.warp().total())).withSett(sett));
  }

  private static State state(Plan plan, Yardage yardage) {
    return new State(plan.warp().sett(), yardage.width().inReed(), yardage.width().finished(plan.allowances()));
  }

  private static List<WeftChange> wefts(Yardage before, Yardage after) {
    Map<YarnColour, Length> was = weft(before);
    Map<YarnColour, Length> becomes = weft(after);
    return was.entrySet().stream().map(yarn -> new WeftChange(yarn.getKey(), yarn.getValue(), becomes.getOrDefault(yarn.getKey(), Length.ZERO))).toList();
  }

  private static Map<YarnColour, Length> weft(Yardage yardage) {
    Map<YarnColour, Length> lengths = new LinkedHashMap<>();
    yardage.needs().stream().filter(need -> need.role() == Need.Role.WEFT).forEach(need -> lengths.merge(need.yarn(), need.length(), Length::plus));
    return lengths;
  }
}
