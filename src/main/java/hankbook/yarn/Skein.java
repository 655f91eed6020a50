package hankbook.yarn;

import hankbook.measure.Length;
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
 * @param fibre what it is spun of, or empty
 * @param grist its yarn number
 * @param form how it is put up
 * @param label the length printed on it
 * @param weighing its weight when it came
 * @param opened whether yarn was taken from it before
 * @param lot dye lot, or empty
 * @param location where it lies, or empty
 * @param cost what was paid for it
 * @param received when it came
 * @param left what a ledger says there is of it now; empty where no ledger is kept of it
 */
public record Skein(
    String code,
    YarnColour yarn,
    String hex,
    String fibre,
    Optional<YarnNumber> grist,
    PackageForm form,
    Optional<Length> label,
    Optional<Weighing> weighing,
    boolean opened,
    String lot,
    String location,
    Optional<Money> cost,
    Optional<LocalDate> received,
    Optional<Length> left) {
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
    Optional<Length> tooLong = Measurement.of(grist, label, weighing).length().filter(length -> length.compareTo(LONGEST) > 0);
    if (tooLong.isPresent()) {
      throw new Unreadable(tooLong.get().toString(), "a skein of at most " + LONGEST);
    }
  }

  /** How its length was known when it came. */
  public Measurement measurement() {
    return Measurement.of(grist, label, weighing);
  }

  /** Whether any length of it is known, by its measurement or from a ledger. */
  public boolean isMeasured() {
    return left.isPresent() || measurement().length().isPresent();
  }

  /** What it holds; nothing where that is not known. */
  public Length holds() {
    return left.or(() -> measurement().length()).orElse(Length.ZERO);
  }

  /**
   * The same skein with what a ledger says of it.
   *
   * @param now what there is of it
   * @param begun whether yarn was ever taken off it
   */
  public Skein withLeft(Length now, boolean begun) {
    return new Skein(code, yarn, hex, fibre, grist, form, label, weighing, begun, lot, location, cost, received, Optional.of(now));
  }

  /** Whether the printed length and the weighed one differ by over a tenth of the printed. */
  public boolean weightDisagrees() {
    return measurement() instanceof Measurement.ByWeight weighed
        && label.filter(printed -> differs(printed, weighed.length().orElseThrow())).isPresent();
  }

  private static boolean differs(Length printed, Length weighed) {
    return Math.abs(printed.minus(weighed).tenthsOfMillimetre()) * 10 > printed.tenthsOfMillimetre();
  }
}
