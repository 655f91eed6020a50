package hankbook.allot;

import hankbook.gear.Gear;
import hankbook.gear.Loom;
import hankbook.gear.Weave;
import hankbook.measure.Length;
import hankbook.measure.LengthUnit;
import hankbook.plan.Plan;
import hankbook.plan.Yardage;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
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
      String known = gear.looms().isEmpty() ? "loom add enters it." : "there are " + gear.looms().stream().map(Loom::name).collect(Collectors.joining(", ")) + ".";
      warnings.add(Warning.ofGear(Warning.Code.UNKNOWN_GEAR, "No loom " + name.get() + " is in the ledger; " + known));
    }
    loom.ifPresentOrElse(chosen -> ofLoom(chosen, warnings), () -> withoutLoom(warnings));
    return warnings;
  }

  private void ofLoom(Loom loom, List<Warning> warnings) {
    if (loom.width().compareTo(inReed) < 0) {
      String text = "The warp is " + centimetres(inReed) + " wide in the reed, and " + loom.name() + " weaves " + centimetres(loom.width()) + "; " + widest() + ".";
      warnings.add(Warning.ofGear(Warning.Code.TOO_WIDE, text));
    }
    plan.dressing().weave().filter(weave -> takesMore(weave, loom)).ifPresent(weave -> warnings.add(shafts(weave, loom.name() + " has " + loom.shafts())));
    Length allowed = plan.allowances().loomWaste();
    if (loom.waste().compareTo(allowed) > 0) {
      String text = loom.name() + " wastes " + centimetres(loom.waste()) + " of warp, and the plan allows " + (allowed.isZero() ? "nothing" : centimetres(allowed))
          + " for loom waste; allow " + centimetres(loom.waste()) + ".";
      warnings.add(Warning.ofGear(Warning.Code.LOOM_WASTE, text));
    }
  }

  /** Where the plan chooses no loom that is known, any of them would do. */
  private void withoutLoom(List<Warning> warnings) {
    Optional<Loom> widest = gear.widestLoom();
    if (widest.isPresent() && widest.get().width().compareTo(inReed) < 0) {
      warnings.add(Warning.ofGear(Warning.Code.TOO_WIDE, "The warp is " + centimetres(inReed) + " wide in the reed; " + widest() + "."));
    }
    Optional<Loom> most = mostShafts();
    plan.dressing().weave()
        .filter(weave -> most.isPresent() && takesMore(weave, most.get()))
        .ifPresent(weave -> warnings.add(shafts(weave, "no loom has so many")));
  }

  private String widest() {
    Loom widest = gear.widestLoom().orElseThrow();
    boolean takesIt = widest.width().compareTo(inReed) >= 0;
    return (takesIt ? widest.name() + " takes it, with " : "no loom takes it, the widest is " + widest.name() + " with ") + centimetres(widest.width());
  }

  private Warning shafts(Weave weave, String has) {
    Loom most = mostShafts().orElseThrow();
    String nearest = takesMore(weave, most) ? "the most has " : "enough has ";
    return Warning.ofGear(Warning.Code.SHAFTS, weave + " takes " + weave.shafts().orElseThrow() + " shafts, and " + has + "; " + nearest + most.name() + " with " + most.shafts() + ".");
  }

  private Optional<Loom> mostShafts() {
    return gear.looms().stream().max(Comparator.comparingInt(Loom::shafts).thenComparing(Loom::width));
  }

  private static boolean takesMore(Weave weave, Loom loom) {
    return weave.shafts().isPresent() && weave.shafts().getAsInt() > loom.shafts();
  }

  static String centimetres(Length length) {
    return length.print(LengthUnit.CENTIMETRE, 1);
  }
}
