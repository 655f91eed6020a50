package hankbook.desktop.units;

import hankbook.measure.Exact;
import hankbook.measure.Grist;
import hankbook.measure.Length;
import hankbook.measure.LengthUnit;
import hankbook.measure.Mass;
import hankbook.measure.MassUnit;
import hankbook.measure.NumberingSystem;
import hankbook.measure.Sett;
import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.text.DecimalFormat;
import java.text.DecimalFormatSymbols;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * How quantities are written: converted exactly, rounded half up, thousands apart by a thin space so that neither comma nor point can be taken for the other.
 *
 * @param units in which they are said
 * @param mark between whole and part of a number
 */
public record Quantities(Units units, char mark) {
  private static final char THIN_SPACE = '\u202F';
  private static final Pattern PLAIN = Pattern.compile("\\d+(?:\\.\\d+)? ?(m|cm|g|/cm)");
  private static final int LONG = 3;
  private static final Mass HEAVY = Mass.of(BigDecimal.TWO, MassUnit.POUND, RoundingMode.HALF_UP);
  private static final Mass LIGHT = Mass.grams(10);

  /** A length of yarn, to a tenth of a metre or yard. */
  public String yarn(Length length) {
    LengthUnit unit = units.yarn().unit();
    return number(length.in(unit), "#,##0.0") + " " + unit.symbol();
  }

  /** A length or width of cloth, reed or warp: up to three metres in centimetres to a tenth, beyond in metres to a hundredth; likewise in inches and yards. */
  public String cloth(Length length) {
    LengthUnit longUnit = units.cloth().longUnit();
    boolean isLong = Math.abs(length.tenthsOfMillimetre()) > LONG * longUnit.tenthsOfMillimetre();
    return isLong ? number(length.in(longUnit), "#,##0.00") + " " + longUnit.symbol() : width(length);
  }

  /** A width, to a tenth of a centimetre or inch however wide. */
  public String width(Length width) {
    LengthUnit unit = units.cloth().unit();
    return number(width.in(unit), "#,##0.#") + " " + unit.symbol();
  }

  /** A mass: to the gram, what is under 10 g to a hundredth; or to a tenth of an ounce, what is over two pounds to a hundredth of a pound. */
  public String mass(Mass mass) {
    boolean light = Math.abs(mass.milligrams()) < LIGHT.milligrams();
    return switch (units.weight()) {
      case GRAMS -> number(mass.in(MassUnit.GRAM), light ? "0.##" : "#,##0") + " " + MassUnit.GRAM.symbol();
      case OUNCES -> mass.compareTo(HEAVY) > 0
          ? number(mass.in(MassUnit.POUND), "#,##0.00") + " " + MassUnit.POUND.symbol()
          : number(mass.in(MassUnit.OUNCE), light ? "0.##" : "0.0") + " " + MassUnit.OUNCE.symbol();
    };
  }

  /** Threads to a length: as it was entered where that is the user's own unit, else rounded. */
  public String sett(Sett sett) {
    Length span = units.sett().span();
    Sett said = sett.span().equals(span) ? sett : Sett.of(sett.perTenth(), span, units.sett().places(), RoundingMode.HALF_UP);
    return new Marks(mark).shown(said.toString());
  }

  /** A grist by the number of its fibre, to four figures or so. */
  public String grist(Grist grist, String fibre) {
    NumberingSystem system = units.numbers().ofFibre(fibre);
    String number = number(system.numberOf(grist), "0.###");
    return system == NumberingSystem.METRIC ? system.symbol() + " " + number : number + " " + system.symbol();
  }

  /** An example that is round in metric units as one that is round in the user's; what is no length, mass or sett is left as it is but for its mark. */
  public String example(String metric) {
    Marks marks = new Marks(mark);
    Matcher plain = PLAIN.matcher(metric);
    if (!plain.matches()) {
      return marks.shown(metric);
    }
    return switch (plain.group(1)) {
      case "m" -> round(Length.parse(metric).in(units.yarn().unit()), units.yarn().unit().symbol());
      case "cm" -> round(Length.parse(metric).in(units.cloth().unit()), units.cloth().unit().symbol());
      case "g" -> round(Mass.parse(metric).in(units.weight().unit()), units.weight().unit().symbol());
      default -> sett(new Sett(new BigDecimal(figures(Sett.parse(metric).threadsIn(units.sett().span().exactTenths()))), units.sett().span()));
    };
  }

  private String round(BigFraction exact, String unit) {
    return new Marks(mark).shown(figures(exact)) + " " + unit;
  }

  /** To two figures, to one where it is under one; what is whole at once stays whole. */
  private static String figures(BigFraction exact) {
    BigDecimal decimal = Exact.decimal(exact, 4, RoundingMode.HALF_UP);
    int figures = decimal.stripTrailingZeros().precision();
    boolean given = figures <= 2 || (figures == 3 && decimal.stripTrailingZeros().scale() <= 0);
    return (given ? decimal : decimal.round(new MathContext(decimal.abs().compareTo(BigDecimal.ONE) < 0 ? 1 : 2))).stripTrailingZeros().toPlainString();
  }

  /** A part as a percentage with at most so many places. */
  public String percent(BigFraction part, int places) {
    return number(part.multiply(100), places == 0 ? "0" : "0." + "#".repeat(places)) + " %";
  }

  /** A number as a pattern of {@link DecimalFormat} has it. */
  public String number(BigFraction exact, String pattern) {
    return number(Exact.decimal(exact, 9, RoundingMode.HALF_UP), pattern);
  }

  /** A number as a pattern of {@link DecimalFormat} has it. */
  public String number(BigDecimal number, String pattern) {
    DecimalFormatSymbols symbols = DecimalFormatSymbols.getInstance(Locale.ROOT);
    symbols.setGroupingSeparator(THIN_SPACE);
    symbols.setDecimalSeparator(mark);
    DecimalFormat format = new DecimalFormat(pattern, symbols);
    format.setRoundingMode(RoundingMode.HALF_UP);
    return format.format(number);
  }
}
