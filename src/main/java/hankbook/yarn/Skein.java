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
 * @param measurement how its length is known
 * @param label a printed length that a weighing has overruled
 * @param opened whether yarn was taken from it before
 * @param lot dye lot, or empty
 * @param location where it lies, or empty
 * @param cost what was paid for it
 * @param received when it came
 */
public record Skein(
    String code,
    YarnColour yarn,
    String hex,
    String fibre,
    Optional<YarnNumber> grist,
    PackageForm form,
    Measurement measurement,
    Optional<Length> label,
    boolean opened,
    String lot,
    String location,
    Optional<Money> cost,
    Optional<LocalDate> received) {
  public Skein {
    if (code.isBlank()) {
      throw new Unreadable(code, "a code of its own");
    }
    if (!hex.isEmpty() && !hex.matches("#[0-9a-f]{6}")) {
      throw new Unreadable(hex, "a colour such as #2f5d8a");
    }
  }

  /** What it holds; nothing where that is not known. */
  public Length holds() {
    return measurement.length().orElse(Length.ZERO);
  }

  /** Whether the printed length and the weighed one differ by over a tenth of the printed. */
  public boolean weightDisagrees() {
    return label.filter(printed -> differs(printed, holds())).isPresent();
  }

  private static boolean differs(Length printed, Length weighed) {
    return Math.abs(printed.minus(weighed).tenthsOfMillimetre()) * 10 > printed.tenthsOfMillimetre();
  }
}
