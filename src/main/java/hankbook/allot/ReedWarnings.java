package hankbook.allot;


import hankbook.gear.Gear;
import hankbook.gear.Reed;
import hankbook.gear.SleyChoice;
import hankbook.measure.Length;
import hankbook.measure.Phrase;
import hankbook.measure.Sett;
import hankbook.plan.Plan;
import hankbook.plan.Yardage;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.apache.commons.numbers.fraction.BigFraction;

/** What a plan asks of a reed that it does not give. */
record ReedWarnings(Plan plan, Yardage yardage, Gear gear, BigFraction tolerance) {
  private static final int NAMED = 3;

  List<Warning> all() {
    List<Warning> warnings = new ArrayList<>();
    Optional<String> said = plan.dressing().reed();
    Optional<Reed> owned = said.flatMap(text -> gear.reed(text, inReed()));
    if (gear.isKnown() && said.isPresent() && owned.isEmpty() && (!gear.reeds().isEmpty() || Reed.outright(said.get()).isEmpty())) {
      warnings.add(Warning.ofGear(Warning.Code.UNKNOWN_GEAR, gear.reeds().isEmpty()
          ? Phrase.of("No reed {0} is in the ledger; reed add enters it.", said.get())
          : Phrase.of("No reed {0} is in the ledger; there are {1}.", said.get(), Phrase.list(gear.reeds().stream().map(Reed::name).toList()))));
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
    Phrase.Width width = Phrase.width(widest.get().width().orElseThrow());
    Phrase takesIt = widest.get().takes(inReed())
        ? Phrase.of("reed {0} takes it, with {1}", widest.get().name(), width)
        : Phrase.of("no reed takes it, the widest is {0} with {1}", widest.get().name(), width);
    Phrase.Width warp = Phrase.width(inReed());
    Phrase text = chosen
        .map(reed -> Phrase.of("The warp is {0} wide in the reed, and reed {1} is {2}; {3}.", warp, reed.name(), Phrase.width(reed.width().orElseThrow()), takesIt))
        .orElseGet(() -> Phrase.of("The warp is {0} wide in the reed; {1}.", warp, takesIt));
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
    Phrase.Listed others = nearest(wanted, chosen);
    Phrase text = said.isPresent()
        ? Phrase.of("Reed {0}, and the plan is set {1}. Nearest: {2}.", given(nearest), wanted, others)
        : chosen.map(reed -> Phrase.of("No sleying of reed {0} gives {1} within {2}. Nearest: {3}.", reed.name(), wanted, new Phrase.Percent(tolerance, 2), others))
            .orElseGet(() -> Phrase.of("No reed gives {0} within {1}. Nearest: {2}.", wanted, new Phrase.Percent(tolerance, 2), others));
    return Optional.of(Warning.ofGear(Warning.Code.SETT, text));
  }

  /** The nearest in each reed that takes the warp. */
  private Phrase.Listed nearest(Sett wanted, Optional<Reed> chosen) {
    Stream<Reed> reeds = Stream.concat(chosen.filter(reed -> reed.takes(inReed())).stream(), wideEnough().stream()).distinct();
    List<Object> said = reeds.map(reed -> SleyChoice.all(wanted, List.of(reed)).getFirst())
        .sorted(Comparator.comparing(choice -> choice.off().abs()))
        .limit(NAMED)
        .<Object>map(choice -> Phrase.of("reed {0}", given(choice)))
        .toList();
    return new Phrase.Listed(said, "; ");
  }

  /** The reeds that take the warp; all of them where none does, of which another warning speaks. */
  private List<Reed> wideEnough() {
    List<Reed> wideEnough = gear.reeds().stream().filter(reed -> reed.takes(inReed())).toList();
    return wideEnough.isEmpty() ? gear.reeds() : wideEnough;
  }

  private Phrase given(SleyChoice choice) {
    int ground = yardage.width().ends() - plan.warp().selvedgeEnds();
    return Phrase.of("{0} sleyed {1} gives {2}, {3} wide", choice.reed().name(), choice.sley(), choice.sett(), Phrase.width(choice.widthOf(ground)));
  }

  private Length inReed() {
    return yardage.width().inReed();
  }
}
