package hankbook.measure;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;

/** A unit of length. Each is a whole number of tenths of a millimetre: 1 in = 25.4 mm and 1 yd = 0.9144 m exactly (international yard, 1959). */
public enum LengthUnit {
  MILLIMETRE("mm", 10),
  CENTIMETRE("cm", 100),
  METRE("m", 10_000),
  INCH("in", 254),
  FOOT("ft", 3_048),
  YARD("yd", 9_144);

  private final String symbol;
  private final long tenths;

  LengthUnit(String symbol, long tenths) {
    this.symbol = symbol;
    this.tenths = tenths;
  }

  /** How the unit is written after a number. */
  public String symbol() {
    return symbol;
  }

  /** The unit in tenths of a millimetre. */
  public long tenthsOfMillimetre() {
    return tenths;
  }

  static Optional<LengthUnit> of(String symbol) {
    String wanted = symbol.toLowerCase(Locale.ROOT);
    return Arrays.stream(values()).filter(unit -> unit.symbol.equals(wanted)).findFirst();
  }
}
