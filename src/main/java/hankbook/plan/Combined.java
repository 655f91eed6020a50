package hankbook.plan;

import hankbook.measure.Exact;
import java.math.RoundingMode;
import java.util.List;
import org.apache.commons.numbers.fraction.BigFraction;

/** How the parts of a figure make it. */
public enum Combined {
  /** It has no parts: it was entered, measured or is written in the ledger. */
  GIVEN,
  /** By a rule that its words say and plain arithmetic does not. */
  RULE,
  SUM,
  /** The first less all others. */
  DIFFERENCE,
  PRODUCT,
  /** The first by all others. */
  QUOTIENT,
  LARGEST,
  /** The first, up to a whole number; what is within 1e-9 of one is that one. */
  WHOLE,
  /** The first, up to a whole number of the second, with the same grace. */
  STEP,
  /** The first, up to the next tenth of a millimetre or other smallest unit. */
  UP,
  /** The first, to the nearest smallest unit, half of one up. */
  NEAREST,
  /** The first, down to a whole number. */
  DOWN,
  /** The root of the sum of their squares; each of them, and it, is to the smallest unit. */
  ROOT;

  /** The first fraction less the second tells by its sign which is larger, negative ones too. */
  private static int compare(BigFraction one, BigFraction other) {
    return one.subtract(other).signum();
  }

  /** What parts make, exactly; not of what is given, goes by a rule or is a root. */
  BigFraction of(List<BigFraction> parts) {
    return switch (this) {
      case SUM -> parts.stream().reduce(BigFraction.ZERO, BigFraction::add);
      case DIFFERENCE -> parts.stream().reduce(BigFraction::subtract).orElseThrow();
      case PRODUCT -> parts.stream().reduce(BigFraction.ONE, BigFraction::multiply);
      case QUOTIENT -> parts.stream().reduce(BigFraction::divide).orElseThrow();
      case LARGEST -> parts.stream().max(Combined::compare).orElseThrow();
      case WHOLE -> BigFraction.of(Exact.roundedUp(parts.getFirst()));
      case STEP -> parts.get(1).multiply(Exact.roundedUp(parts.getFirst().divide(parts.get(1))));
      case UP -> BigFraction.of(Exact.whole(parts.getFirst(), RoundingMode.CEILING));
      case NEAREST -> BigFraction.of(Exact.whole(parts.getFirst(), RoundingMode.HALF_UP));
      case DOWN -> BigFraction.of(Exact.whole(parts.getFirst(), RoundingMode.FLOOR));
      case GIVEN, RULE, ROOT -> throw new IllegalArgumentException(this + " makes nothing of its parts alone");
    };
  }

  /** Whether parts make this number. */
  boolean makes(BigFraction number, List<BigFraction> parts) {
    return switch (this) {
      case GIVEN -> parts.isEmpty();
      case RULE -> !parts.isEmpty();
      case ROOT -> isRoot(number, parts);
      case SUM, DIFFERENCE, PRODUCT, QUOTIENT, LARGEST, WHOLE, STEP, UP, NEAREST, DOWN -> compare(of(parts), number) == 0;
    };
  }

  /** Each part may have been rounded by half a unit, and so may the root. */
  private static boolean isRoot(BigFraction number, List<BigFraction> parts) {
    BigFraction grace = BigFraction.of(parts.size() + 1L, 2);
    BigFraction square = parts.stream().map(part -> part.multiply(part)).reduce(BigFraction.ZERO, BigFraction::add);
    BigFraction least = compare(number, grace) < 0 ? BigFraction.ZERO : number.subtract(grace);
    BigFraction most = number.add(grace);
    return compare(least.multiply(least), square) <= 0 && compare(square, most.multiply(most)) <= 0;
  }

  /** What stands between the parts where they are written: {@code +}, {@code −}, {@code ×}, {@code ÷}; empty where nothing does. */
  public String sign() {
    return switch (this) {
      case SUM -> "+";
      case DIFFERENCE -> "−";
      case PRODUCT -> "×";
      case QUOTIENT -> "÷";
      case GIVEN, RULE, LARGEST, WHOLE, STEP, UP, NEAREST, DOWN, ROOT -> "";
    };
  }
}
