package hankbook.studio;

import hankbook.allot.Judgement;
import hankbook.exchange.BadInput;
import hankbook.exchange.PlanFile;
import hankbook.gear.Gear;
import hankbook.gear.Reed;
import hankbook.gear.Sley;
import hankbook.gear.SleyChoice;
import hankbook.gear.Sleying;
import hankbook.measure.Length;
import hankbook.measure.Sett;
import hankbook.plan.Plan;
import hankbook.plan.Yardage;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

/** How a plan's ends go through a reed. */
public final class SleyPlan {
  private SleyPlan() {}

  /**
   * What is asked beside the plan; where it is empty, the plan and the studio's reeds say it.
   *
   * @param reed a reed's name, or its dents
   * @param sett the sett to be given
   * @param sley ends in the dents
   * @param selvedgePerDent how many of the plan's selvedge ends go in a dent; empty where they are sleyed like the rest
   */
  public record Wish(Optional<String> reed, Optional<Sett> sett, Optional<Sley> sley, OptionalInt selvedgePerDent) {}

  /**
   * The answer.
   *
   * @param plan its name
   * @param planned the width in the reed that the plan reckons with
   * @param choices ways to give the sett, the nearest first
   * @param choice the one that is worked out
   * @param sleying that one, dent by dent
   */
  public record Sleyed(String plan, Length planned, List<SleyChoice> choices, SleyChoice choice, Sleying sleying) {
    public Sleyed {
      choices = List.copyOf(choices);
    }
  }

  /**
   * Sleys a plan of the ledger.
   *
   * @throws BadInput if there is no such plan, no such reed, or the reed has too few dents
   */
  public static Sleyed named(Studio studio, String name, Wish wish) throws BadInput {
    record Found(Optional<String> text, Gear gear, Judgement judgement) {}
    Found found = studio.read(session -> new Found(Plans.text(session, name), OwnGear.of(session), Settings.judgement(session)));
    return of(name, PlanFile.read(name, found.text().orElseThrow(() -> CheckPlan.noSuchPlan(name))), found.gear(), found.judgement(), wish);
  }

  /**
   * Sleys a plan with the reeds of a studio, which may be none.
   *
   * @param source what the plan was read from, for messages
   * @param judgement by which a reed's sett is near enough
   * @throws BadInput if there is no such reed, or the reed has too few dents
   */
  public static Sleyed of(String source, Plan plan, Gear gear, Judgement judgement, Wish wish) throws BadInput {
    Yardage yardage = Answer.reckoned(source, () -> Yardage.of(plan));
    Length planned = yardage.width().inReed();
    Sett wanted = wish.sett().orElse(plan.warp().sett());
    List<Reed> reeds = reeds(plan, gear, wish, planned);
    List<SleyChoice> choices = choices(wanted, reeds, judgement);
    Optional<Sley> said = wish.sley().or(() -> wish.sett().isPresent() || wish.reed().isPresent() ? Optional.empty() : plan.dressing().sley());
    SleyChoice choice = said.map(sley -> SleyChoice.nearest(wanted, reeds, sley)).orElse(choices.getFirst());
    Sleying.Selvedge selvedge =
        wish.selvedgePerDent().isPresent() ? new Sleying.Selvedge(plan.warp().selvedgeEnds(), wish.selvedgePerDent().getAsInt()) : Sleying.Selvedge.NONE;
    Sleying sleying = Answer.reckoned(source, () -> new Sleying(choice.reed(), choice.sley(), yardage.width().ends(), selvedge));
    return new Sleyed(plan.name(), planned, choices, choice, sleying);
  }

  /**
   * Ways to give a sett in the studio's own reeds, whichever the plan says: the nearest first, in the reeds that take the warp where any does.
   * None where the studio has no reed.
   *
   * @param judgement by which a reed's sett is near enough
   * @throws BadInput if the plan does not add up
   */
  public static List<SleyChoice> inOwnReeds(Plan plan, Gear gear, Judgement judgement, Sett wanted) throws BadInput {
    Length planned = Answer.reckoned(plan.name(), () -> Yardage.of(plan)).width().inReed();
    return gear.reeds().isEmpty() ? List.of() : choices(wanted, wideEnough(gear, planned), judgement);
  }

  /** Those within the tolerance, else the nearest few. */
  private static List<SleyChoice> choices(Sett wanted, List<Reed> reeds, Judgement judgement) {
    List<SleyChoice> all = SleyChoice.all(wanted, reeds);
    List<SleyChoice> near = all.stream().filter(choice -> choice.isWithin(judgement.settTolerance())).limit(8).toList();
    return near.isEmpty() ? all.subList(0, Math.min(3, all.size())) : near;
  }

  private static List<Reed> reeds(Plan plan, Gear gear, Wish wish, Length planned) throws BadInput {
    Optional<String> said = wish.reed().or(() -> plan.dressing().reed());
    if (said.isPresent()) {
      String text = said.get();
      String wanted = "reed: found '" + text + "', wanted a reed that reed list shows, or dents such as 12/in";
      return List.of(gear.reed(text, planned).or(() -> Reed.outright(text)).orElseThrow(() -> new BadInput(wanted)));
    }
    if (gear.reeds().isEmpty()) {
      throw new BadInput(plan.name() + ": found no reed in plan or ledger, wanted one: --reed 12/in, or reed add");
    }
    return wideEnough(gear, planned);
  }

  private static List<Reed> wideEnough(Gear gear, Length planned) {
    List<Reed> wideEnough = gear.reeds().stream().filter(reed -> reed.takes(planned)).toList();
    return wideEnough.isEmpty() ? gear.reeds() : wideEnough;
  }
}
