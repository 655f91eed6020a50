package hankbook.studio;

import hankbook.exchange.BadInput;
import hankbook.measure.Phrase;
import hankbook.measure.Unreadable;
import hankbook.plan.Plan;
import hankbook.plan.PlanChange;
import hankbook.plan.PlanVariants;
import hankbook.plan.Section;
import hankbook.plan.SectionSum;
import hankbook.plan.Sections;
import java.util.OptionalInt;

/** The ends of a plan that are counted in units, and what a change of one section would do. Nothing is kept. */
public final class PlanSections {
  private PlanSections() {}

  /**
   * Another form of one section.
   *
   * @param number which, counted from 1
   * @param repeats how often it would come; empty where that stays
   * @param units how many units each time; empty where that stays
   */
  public record Wish(int number, OptionalInt repeats, OptionalInt units) {}

  /**
   * A plan with one section changed.
   *
   * @param before the sums as they are
   * @param after the sums as they would be
   * @param change what that does to width and yarn
   */
  public record Tried(SectionSum before, SectionSum after, PlanChange change) {}

  /**
   * A plan of the ledger.
   *
   * @throws BadInput if there is none of that name, or it is not finished
   */
  public static Plan plan(Studio studio, String name) throws BadInput {
    return CheckPlan.plan(name, new Plans(studio).text(name));
  }

  /**
   * The ends of a plan added up.
   *
   * @param source what the plan was read from, for messages
   * @throws BadInput if the plan has no sections
   */
  public static SectionSum of(String source, Plan plan) throws BadInput {
    Sections sections = sections(source, plan);
    return Answer.reckoned(source, () -> SectionSum.of(sections, plan.warp().sett(), plan.warp().selvedgeEnds()));
  }

  /**
   * Reckons a plan with one section changed.
   *
   * @param source what the plan was read from, for messages
   * @throws BadInput if the plan has no such section, or does not add up
   */
  public static Tried tried(String source, Plan plan, Wish wish) throws BadInput {
    SectionSum before = of(source, plan);
    return Answer.reckoned(
        source,
        () -> {
          Plan changed = PlanVariants.withSections(plan, changed(plan.warp().sections().orElseThrow(), wish));
          SectionSum after = SectionSum.of(changed.warp().sections().orElseThrow(), plan.warp().sett(), plan.warp().selvedgeEnds());
          return new Tried(before, after, PlanChange.of(plan, changed));
        });
  }

  private static Sections changed(Sections sections, Wish wish) {
    int most = sections.sections().size();
    if (wish.number() < 1 || wish.number() > most) {
      throw new Unreadable("section " + wish.number(), Phrase.of("a section from 1 to {0}", most));
    }
    Section old = sections.sections().get(wish.number() - 1);
    return sections.with(wish.number(), new Section(old.name(), wish.repeats().orElse(old.repeats()), wish.units().orElse(old.units())));
  }

  private static Sections sections(String source, Plan plan) throws BadInput {
    return plan.warp().sections().orElseThrow(() -> new BadInput(source + ": found no sections in the warp, wanted a plan whose ends are counted in units"));
  }
}
