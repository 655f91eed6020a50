package hankbook.measure;

import java.math.BigDecimal;
import java.util.Objects;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * A percentage as it was entered, with what it is a percentage of. Held as a fraction (8 % is 0.08), from 0 to under 10 000 %.
 *
 * @param fraction the exact fraction
 * @param base what it is a part of
 */
public record Percentage(BigFraction fraction, Base base) {
  public static final Percentage ZERO = new Percentage(BigFraction.ZERO, Base.UNSAID);

  private static final Pattern FORM = Pattern.compile("\\s*(\\d{1,4}(?:\\.\\d{1,9})?)\\s*%\\s*(?:of\\s+(cloth|yarn)\\s*)?");
  private static final String WANTED = "a percentage such as 8 %, 8 % of cloth or 8 % of yarn";

  /** What a percentage is a part of. */
  public enum Base {
    /** Nothing was said; for take-up that means of the cloth, elsewhere the larger state. */
    UNSAID,
    /** Crimp: yarn = cloth × (1 + c). ISO 7211-3. */
    CLOTH,
    /** Contraction: yarn = cloth / (1 − t). */
    YARN
  }

  public Percentage {
    Objects.requireNonNull(base);
    if (fraction.signum() < 0) {
      throw new Unreadable(Exact.plain(fraction.multiply(100), 9) + " %", "a percentage of at least 0 %");
    }
    if (base == Base.YARN && fraction.compareTo(BigFraction.ONE) >= 0) {
      throw new Unreadable(Exact.plain(fraction.multiply(100), 9) + " % of yarn", "a part of the yarn under 100 %");
    }
  }

  /**
   * Reads {@code 8 %}, {@code 8 % of cloth} or {@code 8 % of yarn}.
   *
   * @throws Unreadable if it is none of these
   */
  public static Percentage parse(String text) {
    Matcher matcher = FORM.matcher(text);
    if (!matcher.matches()) {
      throw new Unreadable(text, WANTED);
    }
    String of = matcher.group(2);
    Base base = of == null ? Base.UNSAID : of.equals("cloth") ? Base.CLOTH : Base.YARN;
    return new Percentage(Exact.of(new BigDecimal(matcher.group(1))).divide(100), base);
  }

  /** What a length of cloth is multiplied by to give the yarn in it: 1 + c, or 1 / (1 − t) where it is said to be of the yarn. */
  public BigFraction yarnPerCloth() {
    return base == Base.YARN ? BigFraction.ONE.divide(remaining()) : growth();
  }

  /** 1 + p. */
  public BigFraction growth() {
    return BigFraction.ONE.add(fraction);
  }

  /**
   * 1 − p, what is left of the larger state.
   *
   * @throws Unreadable if nothing is left
   */
  public BigFraction remaining() {
    if (fraction.compareTo(BigFraction.ONE) >= 0) {
      throw new Unreadable(toString(), "a percentage under 100 %");
    }
    return BigFraction.ONE.subtract(fraction);
  }

  /** The form {@link #parse} reads back. */
  @Override
  public String toString() {
    String percent = Exact.plain(fraction.multiply(100), 9) + " %";
    return switch (base) {
      case UNSAID -> percent;
      case CLOTH -> percent + " of cloth";
      case YARN -> percent + " of yarn";
    };
  }
}
