package hankbook.reckon;

import hankbook.measure.Exact;
import hankbook.measure.Length;
import hankbook.measure.Phrase;
import hankbook.plan.WorkKind;
import java.math.RoundingMode;
import org.apache.commons.numbers.fraction.BigFraction;

/** In what a thing that is learnt is told, and how far it may differ from cloth to cloth before that means anything. */
@SuppressWarnings("ImmutableEnumChecker") // A fraction cannot change.
public enum LearntUnit {
  /** A part of the cloth, such as take-up. */
  OF_CLOTH(" %", " % of cloth", BigFraction.of(1, 100), 1),
  /** A part of the larger state, such as shrinkage. */
  PART(" %", " %", BigFraction.of(1, 100), 1),
  /** A length, in tenths of a millimetre. */
  LENGTH(" cm", " cm", BigFraction.of(100), 1),
  /** Time, in seconds for an end. */
  END(" s", " s an end", BigFraction.ONE, 1),
  /** Time, in seconds for a pick. */
  PICK(" s", " s a pick", BigFraction.ONE, 1),
  /** Time, in seconds for a piece. */
  PIECE(" min", " min a piece", BigFraction.of(60), 1);

  private static final BigFraction HARDLY = BigFraction.of(1, 100);
  private static final BigFraction TWO_CENTIMETRES = BigFraction.of(200);
  private static final BigFraction ALMOST_ALL = BigFraction.of(99, 100);
  private static final BigFraction A_FIFTH = BigFraction.of(1, 5);

  private final String symbol;
  private final String words;
  private final BigFraction told;
  private final int places;

  LearntUnit(String symbol, String words, BigFraction told, int places) {
    this.symbol = symbol;
    this.words = words;
    this.told = told;
    this.places = places;
  }

  /** Of a time by what it is counted by. */
  static LearntUnit of(WorkKind.Per per) {
    return switch (per) {
      case END -> END;
      case PICK -> PICK;
      case PIECE -> PIECE;
    };
  }

  /** The number alone, as it is told. */
  public String number(BigFraction value) {
    return Exact.plain(value.divide(told), places);
  }

  /** With its unit and what it is of, to be said in any language. */
  public Phrase inFull(BigFraction value) {
    Phrase.Figure figure = new Phrase.Figure(value.divide(told), places);
    return switch (this) {
      case OF_CLOTH -> Phrase.of("{0} of cloth", new Phrase.Percent(value, places));
      case PART, LENGTH -> phrase(value);
      case END -> Phrase.of("{0} s an end", figure);
      case PICK -> Phrase.of("{0} s a pick", figure);
      case PIECE -> Phrase.of("{0} min a piece", figure);
    };
  }

  /** With its unit, to be said in any language. */
  public Phrase phrase(BigFraction value) {
    Phrase.Figure figure = new Phrase.Figure(value.divide(told), places);
    return switch (this) {
      case OF_CLOTH, PART -> Phrase.just(new Phrase.Percent(value, places));
      case LENGTH -> Phrase.just(width(value, print(value)));
      case END, PICK -> Phrase.of("{0} s", figure);
      case PIECE -> Phrase.of("{0} min", figure);
    };
  }

  /** The number of the lower of two values, with its unit only where that is the user's own. */
  Object low(BigFraction value) {
    return this == LENGTH ? width(value, number(value)) : new Phrase.Figure(value.divide(told), places);
  }

  private static Phrase.Width width(BigFraction tenths, String english) {
    return new Phrase.Width(Length.ofTenths(tenths, RoundingMode.HALF_UP), english);
  }

  /** With its unit: {@code 7.4 %}, {@code 68.3 cm}, {@code 12.4 s}. */
  public String print(BigFraction value) {
    return number(value) + symbol;
  }

  /** With its unit and what it is of: {@code 7.4 % of cloth}, {@code 12.4 s an end}. */
  public String printInFull(BigFraction value) {
    return number(value) + words;
  }

  /** Whether two values differ by no more than a tape, a clock and rounding make; common practice. */
  boolean nearlyAlike(BigFraction value, BigFraction mean) {
    BigFraction most = switch (this) {
      case OF_CLOTH, PART -> HARDLY;
      case LENGTH -> TWO_CENTIMETRES;
      case END, PICK, PIECE -> mean.abs().multiply(A_FIFTH);
    };
    return value.subtract(mean).abs().compareTo(most) <= 0;
  }

  /** The nearest that it can be as an allowance: nothing is less than 0, and less is lost of a thing than all of it. */
  BigFraction within(BigFraction value) {
    BigFraction least = value.signum() < 0 ? BigFraction.ZERO : value;
    return this == PART && least.compareTo(ALMOST_ALL) > 0 ? ALMOST_ALL : least;
  }

  /** A value as it is told, exactly. */
  public BigFraction told(BigFraction value) {
    return Exact.of(Exact.decimal(value.divide(told), places, RoundingMode.HALF_UP)).multiply(told);
  }
}
