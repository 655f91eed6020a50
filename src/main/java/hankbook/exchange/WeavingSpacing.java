package hankbook.exchange;

import hankbook.measure.Exact;
import hankbook.measure.Length;
import hankbook.measure.LengthUnit;
import hankbook.measure.Sett;
import hankbook.measure.Unreadable;
import java.math.BigDecimal;
import java.math.BigInteger;
import java.math.RoundingMode;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;

/** The sett that the spacing of a weaving file comes to: the distance from thread to thread, in the units that it names. */
final class WeavingSpacing {
  private static final Length INCH = Length.of(1, LengthUnit.INCH);
  private static final Length CENTIMETRE = Length.of(1, LengthUnit.CENTIMETRE);
  private static final BigFraction WIDEST = BigFraction.of(1, 20);
  private static final BigFraction CLOSEST = BigFraction.of(1000);
  private static final int MOST_PLACES = 2;

  private final WeavingSections sections;
  private final WeavingFaults faults;
  private final WeavingSide side;

  WeavingSpacing(WeavingSections sections, WeavingFaults faults, WeavingSide side) {
    this.sections = sections;
    this.faults = faults;
    this.side = side;
  }

  /**
   * A unit of spacing.
   *
   * @param span of cloth in which threads are counted then
   * @param parts how many of the unit make one span
   */
  private record Unit(Length span, int parts) {}

  /** The sett, where units and spacing are there and come to one that cloth can have. */
  Optional<Sett> sett(int count, Map<Integer, BigDecimal> own) {
    Optional<Unit> unit = sections.line(side.section(), "units").flatMap(line -> faults.read(line, WeavingSpacing::unit));
    Optional<BigDecimal> even = sections.line(side.section(), "spacing").flatMap(line -> faults.read(line, WeavingNumber::decimal));
    sections.line(side.section(), "thickness").ifPresent(line -> faults.read(line, WeavingNumber::decimal));
    if (unit.isEmpty() || count == 0 || (even.isEmpty() && own.size() < count)) {
      return Optional.empty();
    }
    BigDecimal rest = even.orElse(BigDecimal.ZERO).multiply(BigDecimal.valueOf((long) count - own.size()));
    BigDecimal width = own.values().stream().reduce(rest, BigDecimal::add);
    return sett(BigFraction.of(count), width, half(even, own).multiply(count), unit.get());
  }

  /** Half of the last digit written: by so much each distance may have been rounded. */
  private static BigFraction half(Optional<BigDecimal> even, Map<Integer, BigDecimal> own) {
    int places = own.isEmpty() ? even.map(BigDecimal::scale).orElse(0) : own.values().stream().mapToInt(BigDecimal::scale).max().orElse(0);
    return BigFraction.of(BigInteger.ONE, BigInteger.TEN.pow(places).multiply(BigInteger.TWO));
  }

  private static Optional<Sett> sett(BigFraction count, BigDecimal width, BigFraction rounded, Unit unit) {
    BigFraction exact = Exact.of(width);
    if (exact.compareTo(rounded) <= 0) {
      return Optional.empty();
    }
    BigFraction threads = count.multiply(unit.parts()).divide(exact);
    BigFraction fewest = count.multiply(unit.parts()).divide(exact.add(rounded));
    BigFraction most = count.multiply(unit.parts()).divide(exact.subtract(rounded));
    return threads.compareTo(WIDEST) < 0 || threads.compareTo(CLOSEST) > 0 ? Optional.empty() : Optional.of(new Sett(roundest(threads, fewest, most), unit.span()));
  }

  /** The sett with the fewest places that the digits of the spacing allow: 24 to the inch is written as a spacing of 0.042 inches. */
  private static BigDecimal roundest(BigFraction threads, BigFraction fewest, BigFraction most) {
    for (int places = 0; places < MOST_PLACES; places++) {
      BigDecimal round = Exact.decimal(threads, places, RoundingMode.HALF_UP);
      BigFraction exact = Exact.of(round);
      if (exact.compareTo(fewest) >= 0 && exact.compareTo(most) <= 0) {
        return round;
      }
    }
    return Exact.decimal(threads, MOST_PLACES, RoundingMode.HALF_UP);
  }

  /** A decipoint is a tenth of a point, of which 72 make an inch. */
  private static Unit unit(String text) {
    return switch (text.toLowerCase(Locale.ROOT)) {
      case "decipoints" -> new Unit(INCH, 720);
      case "inches" -> new Unit(INCH, 1);
      case "centimeters", "centimetres" -> new Unit(CENTIMETRE, 1);
      default -> throw new Unreadable(text, "Decipoints, Inches or Centimeters");
    };
  }
}
