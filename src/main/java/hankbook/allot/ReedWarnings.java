package hankbook.allot;

import static hankbook.allot.GearWarnings.centimetres;

import hankbook.gear.Gear;
import hankbook.gear.Reed;
import hankbook.gear.SleyChoice;
import hankbook.measure.Exact;
import hankbook.measure.Length;
import hankbook.measure.Sett;
import hankbook.plan.Plan;
import hankbook.plan.Yardage;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.apache.commons.numbers.fraction.BigFraction;

/** What a plan asks of a reed that it does not give. */
record ReedWarnings(Plan plan, Yardage yardage, Gear gear, BigFraction tolerance) {
  private static final int NAMED = 3;
  private static final BigFraction HUNDRED = BigFraction.of(100);

  List<Warning> all() {
    List<Warning> warnings = new ArrayList<>();
    Optional<String> said = plan.dressing().reed();
    Optional<Reed> owned = said.flatMap(text -> gear.reed(text, inReed()));
    if (gear.isKnown() && said.isPresent() && owned.isEmpty() && (!gear.reeds().isEmpty() || Reed.outright(said.get()).isEmpty())) {
      String known = gear.reeds().isEmpty() ? "reed add enters it." : "there are " + gear.reeds().stream().map(Reed::name).collect(Collectors.joining(", ")) + ".";
      warnings.add(Warning.ofGear(Warning.Code.UNKNOWN_GEAR, "No reed " + said.get() + " is in the ledger; " + known));
    }
    tooWide(owned).ifPresent(warnings::add);
    sett(owned.or(() -> said.flatMap(Reed::outright))).ifPresent(warnings::add);
    return warnings;
  }

  private Optional<Warning> tooWide(Optional<Reed> chosen) {
    List<Reed> candidates = chosen.map(List::of).orElse(gear.reeds());
    Optional<Reed> widest = gear.widestReed();
    if (widest.isEmpty() || candidates.stream().anyMatch(reed -> reed.takes(inReed()))) {
      return Optional.empty();
    }
    String is = chosen.map(reed -> ", and reed " + reed.name() + " is " + centimetres(reed.width().orElseThrow())).orElse("");
    String takesIt = widest.get().takes(inReed()) ? "; reed " + widest.get().name() + " takes it, with " : "; no reed takes it, the widest is " + widest.get().name() + " with ";
    String text = "The warp is " + centimetres(inReed()) + " wide in the reed" + is + takesIt + centimetres(widest.get().width().orElseThrow()) + ".";
    return Optional.of(Warning.ofGear(Warning.Code.TOO_WIDE, text));
  }

  private Optional<Warning> sett(Optional<Reed> chosen) {
    List<Reed> candidates = chosen.map(List::of).orElse(wideEnough());
    if (candidates.isEmpty()) {
      return Optional.empty();
    }
    Sett wanted = plan.warp().sett();
    Optional<SleyChoice> said = chosen.flatMap(reed -> plan.dressing().sley().map(sley -> new SleyChoice(wanted, reed, sley)));
    SleyChoice nearest = said.orElseGet(() -> SleyChoice.all(wanted, candidates).getFirst());
    if (nearest.isWithin(tolerance)) {
      return Optional.empty();
    }
    String text = said.isPresent() ? "Reed " + given(nearest) + ", and the plan is set " + wanted : who(chosen) + " gives " + wanted + " within " + percent(tolerance);
    return Optional.of(Warning.ofGear(Warning.Code.SETT, text + ". Nearest: " + nearest(wanted, chosen) + "."));
  }

  private static String who(Optional<Reed> chosen) {
    return chosen.map(reed -> "No sleying of reed " + reed.name()).orElse("No reed");
  }

  /** The nearest in each reed that takes the warp. */
  private String nearest(Sett wanted, Optional<Reed> chosen) {
    Stream<Reed> reeds = Stream.concat(chosen.filter(reed -> reed.takes(inReed())).stream(), wideEnough().stream()).distinct();
    return reeds.map(reed -> SleyChoice.all(wanted, List.of(reed)).getFirst())
        .sorted(Comparator.comparing(choice -> choice.off().abs()))
        .limit(NAMED)
        .map(choice -> "reed " + given(choice))
        .collect(Collectors.joining("; "));
  }

  /** The reeds that take the warp; all of them where none does, of which another warning speaks. */
  private List<Reed> wideEnough() {
    List<Reed> wideEnough = gear.reeds().stream().filter(reed -> reed.takes(inReed())).toList();
    return wideEnough.isEmpty() ? gear.reeds() : wideEnough;
  }

  private String given(SleyChoice choice) {
    int ground = yardage.width().ends() - plan.warp().selvedgeEnds();
    String width = centimetres(choice.widthOf(ground));
    return choice.reed().name() + " sleyed " + choice.sley() + " gives " + choice.sett() + ", " + width + " wide";
  }

  private static String percent(BigFraction part) {
    return Exact.plain(part.multiply(HUNDRED), 2) + " %";
  }

  private Length inReed() {
    return yardage.width().inReed();
  }
}
