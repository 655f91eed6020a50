package hankbook.plan;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** What to say of an order that makes more or fewer ends than the warp has, and with how many repeats it would come nearest. */
final class Reach {
  private Reach() {}

  static String wanted(long made, int ends) {
    long over = made - ends;
    return ends + " ends, as the warp has: " + Math.abs(over) + (over > 0 ? " too many" : " too few");
  }

  static String wanted(Succession written, int ends) {
    return wanted(written.threads(), ends) + longest(written).map(repeat -> nearest(written, repeat, ends)).orElse("");
  }

  /** The repeat that makes most of the order: the one a weaver would lengthen or shorten. */
  private static Optional<Repeat> longest(Succession written) {
    return written.parts().stream()
        .filter(Repeat.class::isInstance)
        .map(Repeat.class::cast)
        .max(Comparator.comparingLong(Repeat::threads));
  }

  private static String nearest(Succession written, Repeat repeat, int ends) {
    long each = repeat.group().threads();
    long beside = written.threads() - repeat.threads();
    long fewer = Math.floorDiv(ends - beside, each);
    List<String> tries = new ArrayList<>();
    for (long times = Math.max(1, fewer); times <= Math.max(1, fewer + 1); times++) {
      long made = beside + times * each;
      tries.add(times + (times == 1 ? " repeat makes " : " repeats make ") + made);
      if (made == ends) {
        return "; " + tries.getLast();
      }
    }
    return "; " + String.join(", ", tries);
  }
}
