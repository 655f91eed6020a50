package hankbook.yarn;

import hankbook.measure.Length;
import hankbook.measure.Phrase;
import hankbook.measure.Unreadable;

/**
 * A length as it was counted on a reel.
 *
 * @param count of turns, at least 1
 * @param reel its circumference, over zero
 */
public record Turns(int count, Length reel) {
  private static final Length LARGEST_REEL = Length.metres(100);

  public Turns {
    if (count < 1) {
      throw new Unreadable(Integer.toString(count), "at least one turn");
    }
    if (!reel.isPositive() || reel.compareTo(LARGEST_REEL) > 0) {
      throw new Unreadable(reel.toString(), Phrase.of("the circumference of a reel, over zero and up to {0}", LARGEST_REEL));
    }
  }

  /** Turns × circumference. */
  public Length length() {
    return reel.times(count);
  }
}
