package hankbook.reckon;

import hankbook.measure.Length;
import hankbook.measure.Phrase;
import hankbook.measure.Unreadable;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.OptionalLong;

/** What a measurement may be. */
final class Measured {
  private Measured() {}

  static void overZero(String what, Optional<Length> length) {
    if (length.filter(measured -> !measured.isPositive()).isPresent()) {
      throw new Unreadable(length.get().toString(), Phrase.of("{0} over zero", what));
    }
  }

  static void zeroOrMore(String what, Optional<Length> length) {
    if (length.filter(Length::isNegative).isPresent()) {
      throw new Unreadable(length.get().toString(), Phrase.of("{0} of at least zero", what));
    }
  }

  static void atLeast(String what, OptionalInt count, int least) {
    atLeast(what, count.isPresent() ? OptionalLong.of(count.getAsInt()) : OptionalLong.empty(), least);
  }

  static void atLeast(String what, OptionalLong count, int least) {
    if (count.isPresent() && count.getAsLong() < least) {
      throw new Unreadable(Long.toString(count.getAsLong()), Phrase.of("{0} of at least {1}", what, least));
    }
  }
}
