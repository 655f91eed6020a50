package hankbook.measure;

import java.math.BigDecimal;
import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;

/** A unit of mass, exact: 1 lb = 0.45359237 kg (international pound, 1959), 1 oz a sixteenth of it. */
public enum MassUnit {
  MILLIGRAM("mg", "1"),
  GRAM("g", "1000"),
  KILOGRAM("kg", "1000000"),
  OUNCE("oz", "28349.523125"),
  POUND("lb", "453592.37");

  private final String symbol;
  private final BigFraction milligrams;

  MassUnit(String symbol, String milligrams) {
    this.symbol = symbol;
    this.milligrams = Exact.of(new BigDecimal(milligrams));
  }

  /** How the unit is written after a number. */
  public String symbol() {
    return symbol;
  }

  /** The unit in milligrams. */
  public BigFraction milligrams() {
    return milligrams;
  }

  static Optional<MassUnit> of(String symbol) {
    String wanted = symbol.toLowerCase(Locale.ROOT);
    return Arrays.stream(values()).filter(unit -> unit.symbol.equals(wanted)).findFirst();
  }
}
