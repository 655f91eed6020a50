package hankbook.measure;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * Threads to a unit of length: ends across the warp, or picks along it. Kept as it was entered, so that 24 to the inch stays 24.
 *
 * @param threads how many, over zero
 * @param span the length they lie in: an inch, a centimetre or ten of them
 */
public record Sett(BigDecimal threads, Length span) implements Comparable<Sett> {
  private static final Pattern FORM = Pattern.compile("\\s*(\\d{1,6}(?:\\.\\d{1,6})?)\\s*/\\s*(in|cm|10\\s*cm|m)\\s*");
  private static final Length INCH = Length.of(1, LengthUnit.INCH);
  private static final Length CENTIMETRE = Length.of(1, LengthUnit.CENTIMETRE);
  private static final Length DECIMETRE = Length.of(10, LengthUnit.CENTIMETRE);

  public Sett {
    if (threads.signum() <= 0) {
      throw new Unreadable(threads.toPlainString(), "more than no threads, such as 10/cm");
    }
    if (!span.isPositive()) {
      throw new Unreadable(span.toString(), "a length over zero for the threads to lie in");
    }
  }

  /**
   * Reads {@code 24/in}, {@code 10/cm} or {@code 100/10 cm}.
   *
   * @throws Unreadable if it is none of these
   */
  public static Sett parse(String text) {
    Matcher matcher = FORM.matcher(text.toLowerCase(Locale.ROOT));
    if (!matcher.matches() || new BigDecimal(matcher.group(1)).signum() == 0) {
      throw new Unreadable(text, "threads to a length such as 10/cm or 24/in");
    }
    Length span =
        switch (matcher.group(2)) {
          case "in" -> INCH;
          case "cm" -> CENTIMETRE;
          case "m" -> Length.metres(1);
          default -> DECIMETRE;
        };
    return new Sett(new BigDecimal(matcher.group(1)), span);
  }

  /**
   * A sett that was reckoned, as so many threads to a length, with at most so many places.
   *
   * @param perTenth threads to a tenth of a millimetre
   */
  public static Sett of(BigFraction perTenth, Length span, int places, RoundingMode rounding) {
    return new Sett(Exact.decimal(perTenth.multiply(span.tenthsOfMillimetre()), places, rounding), span);
  }

  /** So many to the inch. */
  public static Sett perInch(long threads) {
    return new Sett(BigDecimal.valueOf(threads), INCH);
  }

  /** So many to the centimetre. */
  public static Sett perCentimetre(long threads) {
    return new Sett(BigDecimal.valueOf(threads), CENTIMETRE);
  }

  /** The exact number of threads to a tenth of a millimetre. */
  public BigFraction perTenth() {
    return Exact.of(threads).divide(span.tenthsOfMillimetre());
  }

  /** How many threads lie in a length given in tenths of a millimetre, exactly. */
  public BigFraction threadsIn(BigFraction tenths) {
    return perTenth().multiply(tenths);
  }

  /** The width so many threads take, in tenths of a millimetre, exactly. */
  public BigFraction widthOf(long count) {
    return BigFraction.of(count).divide(perTenth());
  }

  @Override
  public int compareTo(Sett other) {
    return perTenth().compareTo(other.perTenth());
  }

  /** The form {@link #parse} reads back. */
  @Override
  public String toString() {
    String per = span.equals(INCH) ? "in" : span.equals(CENTIMETRE) ? "cm" : span.equals(DECIMETRE) ? "10 cm" : "m";
    return Exact.plain(Exact.of(threads), 6) + "/" + per;
  }
}
