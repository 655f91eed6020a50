package hankbook.allot;

import hankbook.gear.Gear;
import hankbook.measure.Length;
import hankbook.measure.Phrase;
import hankbook.plan.Need;
import hankbook.plan.NeedSpread;
import hankbook.plan.Plan;
import hankbook.plan.WarpPart;
import hankbook.plan.Yardage;
import hankbook.yarn.Skein;
import hankbook.yarn.YarnColour;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.stream.Stream;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * The whole answer to the main question: does the shelf cover the plan?
 *
 * @param plan the plan
 * @param yardage what it takes
 * @param covers need against free, yarn by yarn in the plan's order
 * @param shares which skein gives what
 * @param warnings what the weaver should know
 */
public record PlanCheck(Plan plan, Yardage yardage, List<Cover> covers, List<Share> shares, List<Warning> warnings) {
  public PlanCheck {
    covers = List.copyOf(covers);
    shares = List.copyOf(shares);
    warnings = List.copyOf(warnings);
  }

  /**
   * Holds a plan against the skeins that are free; it is taken to need what is planned.
   *
   * @throws hankbook.measure.Unreadable if the plan's order or shares do not add up
   */
  public static PlanCheck of(Plan plan, List<Skein> stock, Judgement judgement) {
    return of(plan, stock, judgement, NeedSpread.UNKNOWN);
  }

  /**
   * Holds a plan against the skeins that are free.
   *
   * @param spread how far its needs may turn out other than planned
   * @throws hankbook.measure.Unreadable if the plan's order or shares do not add up
   */
  public static PlanCheck of(Plan plan, List<Skein> stock, Judgement judgement, NeedSpread spread) {
    Yardage yardage = Yardage.of(plan);
    List<Cover> covers = new ArrayList<>();
    List<Share> shares = new ArrayList<>();
    List<Warning> warnings = new ArrayList<>();
    needsByYarn(yardage).forEach(
        (yarn, ofYarn) -> {
          YarnCheck check = YarnCheck.of(yarn, ofYarn, plan.threads(), skeinsOf(yarn, stock), judgement, spread.of(yarn));
          covers.add(check.cover());
          shares.addAll(check.shares());
          warnings.addAll(check.warnings());
        });
    warpTooShort(yardage).ifPresent(warnings::add);
    WidthWarnings.of(plan, yardage).ifPresent(warnings::add);
    return new PlanCheck(plan, yardage, covers, shares, warnings);
  }

  /** The same answer with what loom and reed have to say to it. */
  public PlanCheck heldAgainst(Gear gear, BigFraction tolerance) {
    List<Warning> all = new ArrayList<>(warnings);
    all.addAll(GearWarnings.of(plan, yardage, gear, tolerance));
    return new PlanCheck(plan, yardage, covers, shares, all);
  }

  /** A warp length that was given outright rules, even where the pieces do not fit on it. */
  private static Optional<Warning> warpTooShort(Yardage yardage) {
    Length over = yardage.warp().parts().getOrDefault(WarpPart.ROUNDING, Length.ZERO);
    return yardage.needs().stream()
        .filter(need -> over.isNegative() && need.role() == Need.Role.WARP)
        .findFirst()
        .map(need -> new Warning(Warning.Code.WARP_TOO_SHORT, need.yarn(), Phrase.of(
            "{0}: the warp of {1} is {2} shorter than its pieces, waste and sampling take.",
            need.yarn(), Phrase.yarn(yardage.warp().total(), 2), Phrase.yarn(over.negated(), 2))));
  }

  /** Whether a check of this plan would say that a yarn is short, without working out the rest of the answer. */
  static boolean isShort(Plan plan, List<Skein> stock, Judgement judgement) {
    return new Trial(stock, judgement).isShort(plan);
  }

  /** The yarns that a check of this plan would call short, in the plan's order, each worked out when it is asked for; and what that took. */
  static Stream<YarnColour> shortYarns(Plan plan, List<Skein> stock, Judgement judgement, Consumer<Effort> spent) {
    return needsByYarn(Yardage.of(plan)).entrySet().stream()
        .filter(
            ofYarn -> {
              Effort effort = Allotting.effort();
              boolean isShort = YarnCheck.isShort(ofYarn.getValue(), skeinsOf(ofYarn.getKey(), stock), judgement.usefulRemnant(), effort);
              spent.accept(effort);
              return isShort;
            })
        .map(Map.Entry::getKey);
  }

  static List<Skein> skeinsOf(YarnColour yarn, List<Skein> stock) {
    return stock.stream().filter(skein -> skein.yarn().equals(yarn)).toList();
  }

  private static Map<YarnColour, List<Need>> needsByYarn(Yardage yardage) {
    Map<YarnColour, List<Need>> needs = new LinkedHashMap<>();
    yardage.needs().forEach(need -> needs.computeIfAbsent(need.yarn(), none -> new ArrayList<>()).add(need));
    return needs;
  }

  /** The yarns that are short. */
  public List<YarnColour> shortYarns() {
    return covers.stream().filter(cover -> cover.verdict() == Verdict.SHORT).map(Cover::yarn).toList();
  }

  /** Whether a yarn is short. */
  public boolean isShort() {
    return covers.stream().anyMatch(cover -> cover.verdict() == Verdict.SHORT);
  }
}
