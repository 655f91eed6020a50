package hankbook.yarn;

import hankbook.measure.Grist;
import hankbook.measure.Length;
import hankbook.measure.Phrase;
import hankbook.measure.Unreadable;
import hankbook.measure.YarnNumber;
import java.time.LocalDate;
import java.util.Optional;
import org.joda.money.Money;

/**
 * One package of yarn, whatever its form.
 *
 * @param code the owner's own mark on it, unique on the shelf, not blank
 * @param yarn the yarn and its colour
 * @param hex its colour in sRGB as {@code #rrggbb}, or empty
 * @param fibre what it is spun of, or empty; where its moisture was measured, a fibre whose standard regain is known
 * @param grist its yarn number
 * @param form how it is put up
 * @param label the length printed on it
 * @param turns counted when it was reeled
 * @param weighing its weight when it came
 * @param opened whether yarn was taken from it before
 * @param lot dye lot, or empty
 * @param location where it lies, or empty
 * @param cost what was paid for it
 * @param received when it came
 * @param kept what a ledger says of it; empty where no ledger is kept of it
 * @param sample the grist of its yarn as it was weighed; empty where its yarn number is all there is
 */
public record Skein(
    String code,
    YarnColour yarn,
    String hex,
    String fibre,
    Optional<YarnNumber> grist,
    PackageForm form,
    Optional<Length> label,
    Optional<Turns> turns,
    Optional<Weighing> weighing,
    boolean opened,
    String lot,
    String location,
    Optional<Money> cost,
    Optional<LocalDate> received,
    Optional<Kept> kept,
    Optional<GristSample> sample) {
  /** More than any mill winds, and small enough that millions of such lengths still add up exactly. */
  public static final Length LONGEST = Length.metres(100_000_000);

  public Skein {
    code = OneLine.of(code);
    fibre = OneLine.of(fibre);
    lot = OneLine.of(lot);
    location = OneLine.of(location);
    if (code.isBlank()) {
      throw new Unreadable(code, "a code of its own");
    }
    if (!hex.isEmpty() && !hex.matches("#[0-9a-f]{6}")) {
      throw new Unreadable(hex, "a colour such as #2f5d8a");
    }
    Optional<LocalDate> unlikely = received.filter(date -> date.getYear() < 1 || date.getYear() > 9999);
    if (unlikely.isPresent()) {
      throw new Unreadable(unlikely.get().toString(), "a date such as 2026-03-14");
    }
    Optional<Length> tooLong =
        new Measures(label, turns, weighing).measurement(grist, Optional.empty(), fibre).length().filter(length -> length.compareTo(LONGEST) > 0);
    if (tooLong.isPresent()) {
      throw new Unreadable(tooLong.get().toString(), Phrase.of("a skein of at most {0}", LONGEST));
    }
  }

  /** A skein whose turns were not counted, and of whose yarn no sample was weighed. */
  public Skein(
      String code, YarnColour yarn, String hex, String fibre, Optional<YarnNumber> grist, PackageForm form, Optional<Length> label, Optional<Weighing> weighing,
      boolean opened, String lot, String location, Optional<Money> cost, Optional<LocalDate> received, Optional<Kept> kept) {
    this(code, yarn, hex, fibre, grist, form, label, Optional.empty(), weighing, opened, lot, location, cost, received, kept, Optional.empty());
  }

  /** The grist that is known best of it: its yarn's own as it was weighed, else its yarn number's. */
  public Optional<Grist> knownGrist() {
    return sample.map(GristSample::grist).or(() -> grist.map(YarnNumber::grist));
  }

  /** What was read off it when it was last measured. */
  public Measures measures() {
    return kept.flatMap(Kept::again).orElseGet(() -> new Measures(label, turns, weighing));
  }

  /** How its length is known since it was last measured. */
  public Measurement measurement() {
    return measures().measurement(grist, sample, fibre);
  }

  /** What a ledger says there is of it now. */
  public Optional<Length> left() {
    return kept.map(Kept::left);
  }

  /** Whether any length of it is known, by its measurement or from a ledger. */
  public boolean isMeasured() {
    return kept.isPresent() || measurement().length().isPresent();
  }

  /** What it holds; nothing where that is not known. */
  public Length holds() {
    return left().or(() -> measurement().length()).orElse(Length.ZERO);
  }

  /**
   * The same skein with what a ledger says there is of it.
   *
   * @param now what there is of it
   * @param begun whether yarn was ever taken off it
   */
  public Skein withLeft(Length now, boolean begun) {
    return withKept(kept.map(was -> new Kept(now, was.counted(), was.again())).orElseGet(() -> Kept.of(now)), begun);
  }

  /**
   * The same skein with what a ledger says of it.
   *
   * @param now what it says
   * @param begun whether yarn was ever taken off it
   */
  public Skein withKept(Kept now, boolean begun) {
    return new Skein(code, yarn, hex, fibre, grist, form, label, turns, weighing, begun, lot, location, cost, received, Optional.of(now), sample);
  }

  /** The same skein, another cost being known of it, or none. */
  public Skein withCost(Optional<Money> paid) {
    return new Skein(code, yarn, hex, fibre, grist, form, label, turns, weighing, opened, lot, location, paid, received, kept, sample);
  }

  /** The same skein as its label alone says it was sold. */
  public Skein asLabelled() {
    return new Skein(
        code, yarn, hex, fibre, grist, form, label, Optional.empty(), Optional.empty(), false, lot, location, cost, received, Optional.empty(), sample);
  }

  /** The same skein, its yarn's own grist being known or not. */
  public Skein withSample(Optional<GristSample> weighed) {
    return sample.equals(weighed) ? this : new Skein(code, yarn, hex, fibre, grist, form, label, turns, weighing, opened, lot, location, cost, received, kept, weighed);
  }

  /** Whether the printed length and the weighed one differ by over a tenth of the printed. */
  public boolean weightDisagrees() {
    return measurement() instanceof Measurement.ByWeight weighed && measures().label().filter(printed -> differ(printed, weighed.length().orElseThrow(), 10)).isPresent();
  }

  /** Whether the turns differ by over a tenth from what is used before them, or from the printed length where they are what is used. */
  public boolean turnsDisagree() {
    return switch (measurement()) {
      case Measurement.ByWeight weighed -> measures().turns().filter(counted -> differ(counted.length(), weighed.length().orElseThrow(), 10)).isPresent();
      case Measurement.ByTurns counted -> measures().label().filter(printed -> differ(printed, counted.turns().length(), 10)).isPresent();
      default -> false;
    };
  }

  /** Whether the grist of its yarn, as it was weighed, makes it over a hundredth longer or shorter than the ledger took it for. */
  public boolean gristDisagrees() {
    return kept.flatMap(Kept::counted).filter(counted -> differ(counted, counted.plus(toRecount()), 100)).isPresent();
  }

  /** How much longer the grist of its yarn, as it was weighed, makes it than the ledger took it for; negative where it makes it shorter. */
  public Length toRecount() {
    Optional<Length> weighed = sample.isPresent() && measurement() instanceof Measurement.ByWeight weight ? weight.length() : Optional.empty();
    return weighed.flatMap(length -> kept.flatMap(Kept::counted).map(length::minus)).orElse(Length.ZERO);
  }

  private static boolean differ(Length one, Length other, int parts) {
    return Math.multiplyExact(Math.abs(one.minus(other).tenthsOfMillimetre()), parts) > one.tenthsOfMillimetre();
  }
}
