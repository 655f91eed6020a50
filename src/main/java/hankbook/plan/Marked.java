package hankbook.plan;

import hankbook.measure.Phrase;
import hankbook.measure.Unreadable;
import hankbook.yarn.YarnColour;
import java.util.List;
import java.util.Set;

/** A yarn of a plan that has a short name in a written order. */
sealed interface Marked permits OrderEntry, Weft {
  YarnColour yarn();

  /** The short name. */
  String mark();

  /**
   * Checks that each mark of a written order is that of one yarn.
   *
   * @throws Unreadable naming the mark that is unknown or is that of two
   */
  static void check(Succession written, List<? extends Marked> yarns) {
    for (String mark : written.marks()) {
      long known = yarns.stream().filter(yarn -> yarn.mark().equals(mark)).count();
      if (known == 0) {
        throw new Unreadable(mark, Phrase.of("one of the order's marks: {0}", String.join(", ", yarns.stream().map(Marked::mark).distinct().toList())));
      }
      if (known > 1) {
        throw new Unreadable(mark, Phrase.of("a mark that only one yarn has, not {0}", known));
      }
    }
  }

  /**
   * Checks that a yarn comes in a written order.
   *
   * @throws Unreadable if it does not
   */
  static void checkUsed(Set<String> written, Marked yarn) {
    if (!written.contains(yarn.mark())) {
      throw new Unreadable("no " + yarn.mark() + " in the written order", "every yarn it is made of in it");
    }
  }
}
