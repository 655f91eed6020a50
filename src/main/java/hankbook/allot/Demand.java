package hankbook.allot;

import hankbook.measure.Length;
import hankbook.measure.Phrase;
import hankbook.measure.Unreadable;
import java.util.List;

/**
 * What a plan asks of one yarn in one colour.
 *
 * @param kinds the kinds of ends, at most 60
 * @param weft metres of weft
 * @param weftInOneLot whether all of the weft must come from one dye lot
 * @param usefulRemnant what is left of a skein serves as weft only where it is longer than this
 * @param threads wound together, at least 1
 */
public record Demand(List<EndKind> kinds, Length weft, boolean weftInOneLot, Length usefulRemnant, int threads) {
  private static final int MOST_KINDS = 60;

  public Demand {
    kinds = List.copyOf(kinds);
    if (kinds.size() > MOST_KINDS) {
      throw new Unreadable(kinds.size() + " kinds of ends", Phrase.of("at most {0} kinds of ends of one yarn", MOST_KINDS));
    }
    if (weft.isNegative()) {
      throw new Unreadable(weft.toString(), "a length of weft of at least zero");
    }
    if (threads < 1) {
      throw new Unreadable(Integer.toString(threads), "threads wound together of at least 1");
    }
  }

  /** Ends of one kind wound one at a time, and weft, from whichever lots. */
  public Demand(int ends, Length perEnd, Length weft, Length usefulRemnant) {
    this(List.of(new EndKind(ends, perEnd, false)), weft, false, usefulRemnant, 1);
  }

  /** All that is wanted. */
  Length length() {
    return kinds.stream().map(kind -> kind.each().times(kind.ends())).reduce(weft, Length::plus);
  }

  /** How many ends there are, of whatever kind. */
  int ends() {
    return kinds.stream().mapToInt(EndKind::ends).sum();
  }
}
