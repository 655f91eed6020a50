package hankbook.plan;

import hankbook.measure.Exact;
import java.math.RoundingMode;
import java.util.Comparator;
import java.util.List;
import java.util.function.Function;
import org.apache.commons.numbers.fraction.BigFraction;

/** How the parts of a figure make it. */
public enum Combined {
  /** It has no parts: it was entered, measured or is written in the ledger. */
  GIVEN(parts -> BigFraction.ZERO),
  /** By a rule that its words say and plain arithmetic does not. */
  RULE(parts -> BigFraction.ZERO),
  SUM(parts -> parts.stream().reduce(BigFraction.ZERO, BigFraction::add)),
  /** The first less all others. */
  DIFFERENCE(parts -> parts.stream().reduce(BigFraction::subtract).orElseThrow()),
  PRODUCT(parts -> parts.stream().reduce(BigFraction.ONE, BigFraction::multiply)),
  /** The first by all others. */
  QUOTIENT(parts -> parts.stream().reduce(BigFraction::divide).orElseThrow()),
  LARGEST(parts -> parts.stream().max(Combined::compare).orElseThrow()),
  /** The first, up to a whole number; what is within 1e-9 of one is that one. */
  WHOLE(parts -> BigFraction.of(Exact.roundedUp(parts.getFirst()))),
  /** The first, up to a whole number of the second, with the same grace. */
  STEP(parts -> parts.get(1).multiply(Exact.roundedUp(parts.getFirst().divide(parts.get(1))))),
  /** The first, up to the next tenth of a millimetre or other smallest unit. */
  UP(parts -> BigFraction.of(Exact.whole(parts.getFirst(), RoundingMode.CEILING))),
  /** The first, to the nearest smallest unit, half of one up. */
  NEAREST(parts -> BigFraction.of(Exact.whole(parts.getFirst(), RoundingMode.HALF_UP))),
  /** The first, down to a whole number. */
  DOWN(parts -> BigFraction.of(Exact.whole(parts.getFirst(), RoundingMode.FLOOR))),
  /** The root of the sum of their squares; each of them, and it, is to the smallest unit. */
  ROOT(parts -> parts.stream().map(part -> part.multiply(part)).reduce(BigFraction.ZERO, BigFraction::add));

  private final Function<List<BigFraction>, BigFraction> made;

  Combined(Function<List<BigFraction>, BigFraction> made) {
    this.made = made;
  }

  /** The first fraction less the second tells by its sign which is larger, negative ones too. */
  private static int compare(BigFraction one, BigFraction other) {
    return one.subtract(other).signum();
  }

  /** What parts make, exactly; not of what is given, goes by a rule or is a root. */
  BigFraction of(List<BigFraction> parts) {
    if (this == GIVEN || this == RULE || this == ROOT) {
      throw new IllegalArgumentException(this + " makes nothing of its parts alone");
    }
    return made.apply(parts);
  }

  /** Whether parts make this number. */
  boolean makes(BigFraction number, List<BigFraction> parts) {
    return switch (this) {
      case GIVEN -> parts.isEmpty();
      case RULE -> !parts.isEmpty();
      case ROOT -> isRoot(number, parts);
      case SUM, DIFFERENCE, PRODUCT, QUOTIENT, LARGEST, WHOLE, STEP, UP, NEAREST, DOWN -> compare(made.apply(parts), number) == 0;
    };
  }

  /** Each part may have been rounded by half a unit, and so may the root. */
  private boolean isRoot(BigFraction number, List<BigFraction> parts) {
    BigFraction grace = BigFraction.of(parts.size() + 1L, 2);
    BigFraction square = made.apply(parts);
    BigFraction least = List.of(BigFraction.ZERO, number.subtract(grace)).stream().max(Comparator.comparing(Function.identity(), Combined::compare)).orElseThrow();
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
