package hankbook.allot;

import hankbook.gear.Gear;
import hankbook.gear.Loom;
import hankbook.gear.Weave;
import hankbook.measure.Length;
import hankbook.measure.Phrase;
import hankbook.plan.Plan;
import hankbook.plan.Yardage;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;

/** What a plan asks of loom and reed that they do not give, and the nearest that would. */
public final class GearWarnings {
  private final Plan plan;
  private final Length inReed;
  private final Gear gear;

  private GearWarnings(Plan plan, Yardage yardage, Gear gear) {
    this.plan = plan;
    this.inReed = yardage.width().inReed();
    this.gear = gear;
  }

  /**
   * Holds a plan against the looms and reeds of the studio.
   *
   * @param tolerance how far a reed may be off the sett, as a part of it
   */
  public static List<Warning> of(Plan plan, Yardage yardage, Gear gear, BigFraction tolerance) {
    List<Warning> warnings = new GearWarnings(plan, yardage, gear).ofLooms();
    warnings.addAll(new ReedWarnings(plan, yardage, gear, tolerance).all());
    return List.copyOf(warnings);
  }

  private List<Warning> ofLooms() {
    List<Warning> warnings = new ArrayList<>();
    Optional<String> name = plan.dressing().loom();
    Optional<Loom> loom = name.flatMap(gear::loom);
    if (name.isPresent() && loom.isEmpty() && gear.isKnown()) {
      warnings.add(Warning.ofGear(Warning.Code.UNKNOWN_GEAR, gear.looms().isEmpty()
          ? Phrase.of("No loom {0} is in the ledger; loom add enters it.", name.get())
          : Phrase.of("No loom {0} is in the ledger; there are {1}.", name.get(), Phrase.list(gear.looms().stream().map(Loom::name).toList()))));
    }
    loom.ifPresentOrElse(chosen -> ofLoom(chosen, warnings), () -> withoutLoom(warnings));
    return warnings;
  }

  private void ofLoom(Loom loom, List<Warning> warnings) {
    if (loom.width().compareTo(inReed) < 0) {
      Phrase text = Phrase.of("The warp is {0} wide in the reed, and {1} weaves {2}; {3}.", Phrase.width(inReed), loom.name(), Phrase.width(loom.width()), widest());
      warnings.add(Warning.ofGear(Warning.Code.TOO_WIDE, text));
    }
    plan.dressing().weave().filter(weave -> takesMore(weave, loom)).ifPresent(weave -> warnings.add(shafts(weave, Phrase.of("{0} has {1}", loom.name(), loom.shafts()))));
    Length allowed = plan.allowances().loomWaste();
    if (loom.waste().compareTo(allowed) > 0) {
      Phrase.Width waste = Phrase.width(loom.waste());
      Phrase text = allowed.isZero()
          ? Phrase.of("{0} wastes {1} of warp, and the plan allows nothing for loom waste; allow {1}.", loom.name(), waste)
          : Phrase.of("{0} wastes {1} of warp, and the plan allows {2} for loom waste; allow {1}.", loom.name(), waste, Phrase.width(allowed));
      warnings.add(Warning.ofGear(Warning.Code.LOOM_WASTE, text));
    }
  }

  /** Where the plan chooses no loom that is known, any of them would do. */
  private void withoutLoom(List<Warning> warnings) {
    Optional<Loom> widest = gear.widestLoom();
    if (widest.isPresent() && widest.get().width().compareTo(inReed) < 0) {
      warnings.add(Warning.ofGear(Warning.Code.TOO_WIDE, Phrase.of("The warp is {0} wide in the reed; {1}.", Phrase.width(inReed), widest())));
    }
    Optional<Loom> most = mostShafts();
    plan.dressing().weave()
        .filter(weave -> most.isPresent() && takesMore(weave, most.get()))
        .ifPresent(weave -> warnings.add(shafts(weave, Phrase.of("no loom has so many"))));
  }

  private Phrase widest() {
    Loom widest = gear.widestLoom().orElseThrow();
    boolean takesIt = widest.width().compareTo(inReed) >= 0;
    Phrase.Width width = Phrase.width(widest.width());
    return takesIt ? Phrase.of("{0} takes it, with {1}", widest.name(), width) : Phrase.of("no loom takes it, the widest is {0} with {1}", widest.name(), width);
  }

  private Warning shafts(Weave weave, Phrase has) {
    Loom most = mostShafts().orElseThrow();
    int takes = weave.shafts().orElseThrow();
    return Warning.ofGear(Warning.Code.SHAFTS, takesMore(weave, most)
        ? Phrase.of("{0} takes {1} shafts, and {2}; the most has {3} with {4}.", weave, takes, has, most.name(), most.shafts())
        : Phrase.of("{0} takes {1} shafts, and {2}; enough has {3} with {4}.", weave, takes, has, most.name(), most.shafts()));
  }

  private Optional<Loom> mostShafts() {
    return gear.looms().stream().max(Comparator.comparingInt(Loom::shafts).thenComparing(Loom::width));
  }

  private static boolean takesMore(Weave weave, Loom loom) {
    return weave.shafts().isPresent() && weave.shafts().getAsInt() > loom.shafts();
  }
}
