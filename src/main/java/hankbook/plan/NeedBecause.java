package hankbook.plan;

import hankbook.yarn.YarnColour;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;

/** Why a plan needs so much of its yarns. */
public final class NeedBecause {
  private final Plan plan;
  private final Making making;
  private final Because inReed;
  private final WarpBecause warp;

  private NeedBecause(Plan plan) {
    this.plan = plan;
    this.making = Making.of(plan);
    this.inReed = WidthBecause.of(plan).inReed();
    this.warp = WarpBecause.of(plan);
  }

  /**
   * What a plan needs of a yarn, in warp and weft together.
   *
   * @throws hankbook.measure.Unreadable if the plan does not add up
   */
  public static Because of(Plan plan, YarnColour yarn) {
    NeedBecause need = new NeedBecause(plan);
    List<Because> roles = new ArrayList<>();
    need.inWarp(yarn).ifPresent(roles::add);
    need.inWeft(yarn).ifPresent(roles::add);
    return Because.sum(Term.NEED, yarn.toString(), Amount.Stretch::new, roles);
  }

  private Optional<Because> inWarp(YarnColour yarn) {
    List<Because> groups = new ArrayList<>();
    making.groups().stream().filter(group -> group.yarn().equals(yarn)).forEach(group -> groups.add(warpOf(group)));
    return groups.isEmpty() ? Optional.empty() : Optional.of(Because.sum(Term.WARP_NEED, yarn.toString(), Amount.Stretch::new, groups));
  }

  private Because warpOf(Making.Group group) {
    List<Because> factors =
        List.of(ends(group), Because.given(Term.STRANDS, Amount.Count.of(group.strands())), warp.total(), Factors.grown(Term.WINDING_GROWTH, Term.WINDING, plan.allowances().winding()));
    return up(group.mark(), Because.made(Term.GROUP_NEED, group.mark(), Amount.Stretch::new, Combined.PRODUCT, factors));
  }

  private static Because ends(Making.Group group) {
    Because ordered = Because.given(Term.ENDS_IN_ORDER, group.mark(), Amount.Count.of(group.ends() - group.repairs()));
    return group.repairs() == 0
        ? ordered
        : Because.made(Term.GROUP_ENDS, group.mark(), Amount.Count::new, Combined.SUM, List.of(ordered, Because.given(Term.REPAIR_ENDS, Amount.Count.of(group.repairs()))));
  }

  private Optional<Because> inWeft(YarnColour yarn) {
    List<Because> wefts = new ArrayList<>();
    WeftPicks.of(making).stream().filter(picks -> picks.weft().yarn().equals(yarn)).forEach(picks -> wefts.add(weftOf(picks)));
    return wefts.isEmpty() ? Optional.empty() : Optional.of(Because.sum(Term.WEFT_NEED, yarn.toString(), Amount.Stretch::new, wefts));
  }

  private Because weftOf(WeftPicks weft) {
    String mark = weft.weft().mark();
    List<Because> factors = new ArrayList<>(List.of(picks(weft), Because.given(Term.STRANDS, Amount.Count.of(weft.weft().strands()))));
    if (!weft.weft().width().equals(BigFraction.ONE)) {
      factors.add(Because.given(Term.PART_OF_REED, new Amount.Factor(weft.weft().width())));
    }
    factors.add(inReed);
    factors.add(Factors.yarnPerCloth(Term.WEFT_GROWTH, Term.WEFT_TAKE_UP, plan.allowances().weftTakeUp()));
    return up(mark, Because.made(Term.WEFT_OF, mark, Amount.Stretch::new, Combined.PRODUCT, factors));
  }

  private Because picks(WeftPicks weft) {
    Because density = Because.given(Term.PICKS_PER_LENGTH, new Amount.Density(weft.weft().picks()));
    Because exact = Because.made(Term.PICKS_EXACT, Amount.Count::new, Combined.PRODUCT, density, woven(weft.weft()));
    Because all = Because.made(Term.PICKS, Amount.Count::new, Combined.WHOLE, exact);
    boolean alone = plan.wefts().stream().filter(other -> other.passage().equals(weft.weft().passage())).count() == 1;
    if (alone && all.amount().equals(Amount.Count.of(weft.picks()))) {
      return all;
    }
    Because share = Because.given(Term.SHARE, new Amount.Factor(weft.weft().share()));
    List<Because> parts = plan.weftSuccession().isPresent() ? List.of(all) : List.of(all, share);
    return new Because(Term.PICKS_SHARED, weft.weft().mark(), Amount.Count.of(weft.picks()), Combined.RULE, parts);
  }

  private Because woven(Weft weft) {
    if (weft.length().isEmpty()) {
      return warp.woven();
    }
    Because given = Because.given(Term.WOVEN_GIVEN, Amount.Stretch.of(weft.length().get()));
    return Because.made(Term.WOVEN, Amount.Stretch::new, Combined.SUM, given, warp.woven().parts().getLast());
  }

  private static Because up(String mark, Because exact) {
    return Because.made(Term.NEED_RECORDED, mark, Amount.Stretch::new, Combined.UP, List.of(exact));
  }
}
