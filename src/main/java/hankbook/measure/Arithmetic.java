package hankbook.measure;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.apache.commons.numbers.fraction.BigFraction;

/** Arithmetic as a weaver writes it, {@code (3 x 36 + 12 + 9) x 4} or {@code 2 x 70 cm + 5 cm}: + - x * / and brackets, exact throughout. */
public final class Arithmetic {
  private static final String WANTED_COUNT = "a whole number, or arithmetic that makes one, such as (3 x 36 + 12) x 4";
  private static final String WANTED_LENGTH = "a length such as 70 cm or 2 x 70 cm + 5 cm (mm, cm, m, in, ft or yd)";
  private static final String WANTED_NUMBER = "a number, or arithmetic that makes one";
  private static final Pattern NUMBER = Pattern.compile("(\\d{1,15}(?:\\.\\d{1,12})?|\\.\\d{1,12})\\s*(mm|cm|m|in|ft|yd)?(?![\\p{L}\\d.,])");
  private static final Pattern NUMBER_BEFORE_TIMES = Pattern.compile("(\\d{1,15}(?:\\.\\d{1,12})?)()(?=\\s*x)");
  private static final int LONGEST = 200;
  private static final BigFraction GREATEST = BigFraction.of(1_000_000_000_000L);

  private final String text;
  private final String wanted;
  private int at;

  private Arithmetic(String text, String wanted) {
    this.text = text;
    this.wanted = wanted;
  }

  /** A number and how many lengths are multiplied in it: 0 for a plain number, 1 for a length in tenths of a millimetre. */
  private record Term(BigFraction amount, int dimension) {}

  /**
   * Reads a whole number of at least zero.
   *
   * @throws Unreadable if the arithmetic is broken or does not make one
   */
  public static int count(String text) {
    Term term = evaluate(text, WANTED_COUNT);
    boolean whole = term.dimension == 0 && term.amount.getDenominator().bitLength() == 1;
    if (!whole || term.amount.signum() < 0 || term.amount.compareTo(BigFraction.of(Integer.MAX_VALUE)) > 0) {
      throw new Unreadable(text, WANTED_COUNT);
    }
    return term.amount.intValue();
  }

  /**
   * Reads a length of at least zero, recorded to the nearest tenth of a millimetre.
   *
   * @throws Unreadable if the arithmetic is broken or does not make one
   */
  public static Length length(String text) {
    Term term = evaluate(text, WANTED_LENGTH);
    boolean nothing = term.dimension == 0 && term.amount.signum() == 0;
    if ((term.dimension != 1 && !nothing) || term.amount.signum() < 0 || term.amount.compareTo(GREATEST) > 0) {
      throw new Unreadable(text, WANTED_LENGTH);
    }
    return Length.ofTenths(term.amount, RoundingMode.HALF_UP);
  }

  /**
   * Reads an exact number of at least zero, {@code 0.8} or {@code 1/3}.
   *
   * @throws Unreadable if the arithmetic is broken or does not make one
   */
  public static BigFraction number(String text) {
    Term term = evaluate(text, WANTED_NUMBER);
    if (term.dimension != 0 || term.amount.signum() < 0) {
      throw new Unreadable(text, WANTED_NUMBER);
    }
    return term.amount;
  }

  private static Term evaluate(String text, String wanted) {
    if (text.length() > LONGEST) {
      throw new Unreadable(text.substring(0, 30) + "…", Phrase.of("{0} of at most {1} characters", wanted, LONGEST));
    }
    Arithmetic reader = new Arithmetic(text.toLowerCase(Locale.ROOT), wanted);
    Term term = reader.sum();
    if (reader.at < text.length()) {
      throw new Unreadable(text, wanted);
    }
    return term;
  }

  private Term sum() {
    Term total = product();
    while (true) {
      if (take('+')) {
        total = added(total, product(), 1);
      } else if (take('-') || take('−')) {
        total = added(total, product(), -1);
      } else {
        return total;
      }
    }
  }

  private Term product() {
    Term total = factor();
    while (true) {
      if (take('x') || take('*') || take('×')) {
        Term other = factor();
        total = new Term(total.amount.multiply(other.amount), total.dimension + other.dimension);
      } else if (take('/')) {
        Term other = factor();
        if (other.amount.signum() == 0) {
          throw broken();
        }
        total = new Term(total.amount.divide(other.amount), total.dimension - other.dimension);
      } else {
        return total;
      }
    }
  }

  private Term factor() {
    if (take('(')) {
      Term inside = sum();
      if (!take(')')) {
        throw broken();
      }
      return inside;
    }
    Matcher number = NUMBER.matcher(text).region(at, text.length()).useTransparentBounds(true);
    if (!number.lookingAt()) {
      // "3 x36" and "3x36" are both written: the x that follows a number is a sign, not a unit.
      number = NUMBER_BEFORE_TIMES.matcher(text).region(at, text.length());
      if (!number.lookingAt()) {
        throw broken();
      }
    }
    at = number.end();
    skipBlanks();
    BigFraction amount = Exact.of(new BigDecimal(number.group(1)));
    String unit = number.group(2);
    return unit == null || unit.isEmpty()
        ? new Term(amount, 0)
        : new Term(amount.multiply(LengthUnit.of(unit).orElseThrow().tenthsOfMillimetre()), 1);
  }

  private Term added(Term one, Term other, int sign) {
    if (one.dimension != other.dimension) {
      throw broken();
    }
    return new Term(one.amount.add(other.amount.multiply(sign)), one.dimension);
  }

  private boolean take(char sign) {
    skipBlanks();
    if (at < text.length() && text.charAt(at) == sign) {
      at++;
      skipBlanks();
      return true;
    }
    return false;
  }

  private void skipBlanks() {
    while (at < text.length() && Character.isWhitespace(text.charAt(at))) {
      at++;
    }
  }

  private Unreadable broken() {
    return new Unreadable(text, wanted);
  }
}
