package hankbook.reckon;

import hankbook.measure.Length;
import hankbook.measure.Unreadable;
import hankbook.yarn.OneLine;
import hankbook.yarn.Turns;
import hankbook.yarn.Weighing;

/**
 * What is still wound on a skein after a cloth was cut off: all of it, with what never left the shelf.
 *
 * @param skein its code, not blank
 * @param left how that is known
 */
public record Leftover(String skein, Left left) {
  public Leftover {
    skein = OneLine.of(skein);
    if (skein.isEmpty()) {
      throw new Unreadable(skein, "the code of a skein");
    }
  }

  /** How it is known what is left. */
  public sealed interface Left {
    /** Nothing is left. */
    record UsedUp() implements Left {}

    /** So much is left, at least zero. */
    record OfLength(Length length) implements Left {
      public OfLength {
        if (length.isNegative()) {
          throw new Unreadable(length.toString(), "a length of at least zero");
        }
      }
    }

    /** It was weighed. */
    record Weighed(Weighing weighing) implements Left {}

    /** It was wound on a reel. */
    record Counted(Turns turns) implements Left {}
  }
}
