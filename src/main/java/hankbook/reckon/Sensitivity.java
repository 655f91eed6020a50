package hankbook.reckon;

import hankbook.measure.Exact;
import hankbook.measure.Length;
import hankbook.measure.Phrase;
import hankbook.plan.Allowances;
import hankbook.plan.NeedSpread;
import hankbook.plan.Plan;
import hankbook.plan.PlanVariants;
import hankbook.plan.Yardage;
import hankbook.yarn.Uncertainty;
import hankbook.yarn.YarnColour;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * What the scatter of earlier cloths makes of a plan's needs, after JCGM 100:2008, 5.1: each allowance is moved by the standard uncertainty of its next value,
 * s × √(1 + 1/n), both ways as far as it goes, and the plan reckoned again; half of what that makes between them is the uncertainty of each yarn's need.
 * The allowances are taken as independent, and the warp's length as not rounded up, since steps would hide what moves it or make it larger.
 *
 * @param plan the plan
 * @param findings of which those of three plans at least count
 * @param manner how its cloth is to be made
 */
public record Sensitivity(Plan plan, Findings findings, Manner manner) {
  private static final int ENOUGH = 3;
  private static final int PLACES = 9;

  /**
   * How far the need of each yarn may turn out other than planned.
   *
   * @throws hankbook.measure.Unreadable if the plan does not add up
   */
  public NeedSpread spread() {
    Map<YarnColour, List<Uncertainty.Part>> parts = new LinkedHashMap<>();
    for (Learnable which : Learnable.values()) {
      if (which.work().isEmpty()) {
        findings.telling(which, manner, ENOUGH).ifPresent(finding -> errors(finding).forEach((yarn, error) -> add(parts, yarn, finding, error)));
      }
    }
    parts.values().forEach(ofYarn -> ofYarn.sort(Comparator.comparing(Uncertainty.Part::error).reversed()));
    return new NeedSpread(parts);
  }

  private static void add(Map<YarnColour, List<Uncertainty.Part>> parts, YarnColour yarn, Finding finding, Length error) {
    if (error.isPositive()) {
      Phrase cause = Phrase.of("{0}, learnt from {1}", new Phrase.Word(finding.which().words()), finding.plans());
      parts.computeIfAbsent(yarn, none -> new ArrayList<>()).add(Uncertainty.Part.of(cause, error));
    }
  }

  /** The slope of each need between the two, times the uncertainty: where an allowance cannot be less than nothing, one side is the shorter. */
  private Map<YarnColour, Length> errors(Finding finding) {
    Learnable which = finding.which();
    Allowances said = plan.allowances().withRoundUpTo(Length.ZERO);
    BigFraction value = LearntAllowance.in(said, which).orElseThrow();
    BigFraction uncertainty = Exact.of(Exact.decimal(finding.uncertainty().orElseThrow(), PLACES, RoundingMode.HALF_UP));
    BigFraction low = which.unit().within(value.subtract(uncertainty));
    BigFraction high = which.unit().within(value.add(uncertainty));
    if (high.compareTo(low) <= 0) {
      return Map.of();
    }
    BigFraction part = uncertainty.divide(high.subtract(low));
    Map<YarnColour, Length> errors = needs(LearntAllowance.with(said, which, high));
    needs(LearntAllowance.with(said, which, low)).forEach((yarn, need) -> errors.merge(yarn, need.negated(), Length::plus));
    errors.replaceAll((_, between) -> Length.ofTenths(between.exactTenths().abs().multiply(part), RoundingMode.HALF_UP));
    return errors;
  }

  private Map<YarnColour, Length> needs(Allowances allowances) {
    Map<YarnColour, Length> needs = new LinkedHashMap<>();
    Yardage.of(PlanVariants.withAllowances(plan, allowances)).needs().forEach(need -> needs.merge(need.yarn(), need.length(), Length::plus));
    return needs;
  }
}
