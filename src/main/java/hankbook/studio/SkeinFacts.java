package hankbook.studio;

import hankbook.yarn.Skein;
import java.time.LocalDate;
import java.util.Optional;
import java.util.stream.Stream;
import org.joda.money.Money;

/**
 * What may be said of a skein after it was written down. What is empty stays as it was said before; nothing of it changes how many metres there are.
 *
 * @param lot its dye lot; a blank text where it has none
 * @param location where it lies; a blank text where that is not known
 * @param cost what was paid for it
 * @param received when it came
 */
public record SkeinFacts(Optional<String> lot, Optional<String> location, Optional<Money> cost, Optional<LocalDate> received) {
  /** Nothing is said. */
  public static final SkeinFacts NONE = new SkeinFacts(Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty());

  /** What is said where it came on a day, unless another day is named. */
  SkeinFacts cameOn(LocalDate day) {
    return new SkeinFacts(lot, location, cost, received.or(() -> Optional.of(day)));
  }

  /** Whether anything is said. */
  public boolean saySomething() {
    return Stream.of(lot, location, cost, received).anyMatch(Optional::isPresent);
  }

  /** The skein as it is described now. */
  Skein of(Skein skein) {
    return new Skein(
        skein.code(), skein.yarn(), skein.hex(), skein.fibre(), skein.grist(), skein.form(), skein.label(), skein.turns(), skein.weighing(), skein.opened(),
        lot.orElse(skein.lot()), location.orElse(skein.location()), cost.or(skein::cost), received.or(skein::received), skein.kept(), skein.sample());
  }

  /** @throws NotDone if yarn would have come on a day after today */
  void refuseWhatIsYetToCome(LocalDate today) throws NotDone {
    if (received.filter(day -> day.isAfter(today)).isPresent()) {
      throw NotDone.because("Yarn cannot have come on {0}, which is yet to come; give today or a day that is past.", received.get());
    }
  }
}
