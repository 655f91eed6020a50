package hankbook.desktop;

import hankbook.allot.Judgement;
import hankbook.desktop.say.Say;
import hankbook.exchange.BadInput;
import hankbook.exchange.PlanDraft;
import hankbook.exchange.PlanField;
import hankbook.exchange.PlanPart;
import hankbook.exchange.RemedyDraft;
import hankbook.gear.Gear;
import hankbook.gear.Sley;
import hankbook.gear.SleyChoice;
import hankbook.measure.Sett;
import hankbook.plan.Plan;
import hankbook.plan.PlanVariants;
import hankbook.plan.SettChange;
import hankbook.studio.Resley;
import hankbook.studio.SettPlan;
import hankbook.studio.ShelfSkein;
import hankbook.studio.SleyPlan;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * What a sett that is tried comes to.
 *
 * @param plan the plan it is tried for
 * @param sett the sett that is tried; the plan's where no other is
 * @param advised how closely the warp may be set
 * @param choices ways to sley it in the studio's reeds, the nearest first
 * @param sleyed the chosen way, end by end
 * @param noReed why it cannot be sleyed as chosen, or empty
 * @param change what it would do to a warp that is beamed; none where it is the plan's own sett
 */
record SettTrial(
    Plan plan, Sett sett, SettPlan.Advised advised, List<SleyChoice> choices, Optional<SleyPlan.Sleyed> sleyed, String noReed, Optional<SettChange> change) {
  SettTrial {
    choices = List.copyOf(choices);
  }

  /**
   * What is tried.
   *
   * @param sett another than the plan's
   * @param wish by what the advice is reckoned
   * @param choice the way of sleying that was chosen; empty for the plan's, else the nearest
   */
  record Tried(Optional<Sett> sett, SettPlan.Wish wish, Optional<SleyChoice> choice) {}

  static SettTrial of(Plan plan, Tried tried, List<ShelfSkein> skeins, Gear gear, Judgement judgement) throws BadInput {
    Sett planned = plan.warp().sett();
    Sett sett = tried.sett().orElse(planned);
    SettPlan.Advised advised = SettPlan.of(plan, skeins.stream().map(ShelfSkein::skein).toList(), tried.wish());
    Optional<SettChange> change = sett.compareTo(planned) == 0 ? Optional.empty() : Optional.of(Resley.tried(plan, sett));
    Plan reset = reset(plan, sett);
    List<SleyChoice> choices = SleyPlan.inOwnReeds(reset, gear, judgement, sett);
    try {
      SleyPlan.Wish wish = wish(plan, sett, tried, choices);
      return new SettTrial(plan, sett, advised, choices, Optional.of(SleyPlan.of(plan.name(), reset, gear, judgement, wish)), "", change);
    } catch (BadInput refused) {
      boolean noReed = choices.isEmpty() && plan.dressing().reed().isEmpty();
      return new SettTrial(plan, sett, advised, choices, Optional.empty(), noReed ? Say.text("No reed is entered in the ledger yet.") : PlanWords.why(refused, plan.name()), change);
    }
  }

  /** The plan with another sett: as wide as before, unless its ends are given outright. */
  private static Plan reset(Plan plan, Sett sett) {
    return sett.compareTo(plan.warp().sett()) == 0 || plan.warp().ends().isPresent() ? plan : PlanVariants.withSett(plan, sett);
  }

  private static SleyPlan.Wish wish(Plan plan, Sett sett, Tried tried, List<SleyChoice> choices) {
    boolean said = plan.dressing().reed().isPresent() || plan.dressing().sley().isPresent();
    Optional<SleyChoice> choice = tried.choice().or(() -> said ? Optional.empty() : choices.stream().findFirst());
    Optional<Sley> sley = choice.map(SleyChoice::sley).or(() -> plan.dressing().sley());
    return new SleyPlan.Wish(choice.map(way -> way.reed().name()), Optional.of(sett), sley, OptionalInt.empty());
  }

  /** What would be entered for the sett that is tried. */
  PlanDraft entered(PlanDraft draft) {
    PlanDraft set = draft.with(PlanField.of(PlanPart.WARP, "sett"), sett.toString());
    return plan.warp().ends().isPresent() ? set : RemedyDraft.apply(set, plan, reset(plan, sett));
  }

  /** Whether the plan has the chosen sleying already. */
  boolean isSleyedAlready() {
    return sleyed.filter(chosen -> plan.dressing().sley().equals(Optional.of(chosen.choice().sley())) && plan.dressing().reed().equals(Optional.of(chosen.choice().reed().name()))).isPresent();
  }
}
