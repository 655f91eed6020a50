package hankbook.allot;

import hankbook.measure.Phrase;
import hankbook.measure.Unreadable;
import hankbook.plan.Bout;

/**
 * How the weaver likes to wind.
 *
 * @param threads held together, from 1 to 100
 * @param across whether the threads held may be of different yarns, as they come in the order of the warp
 * @param bout the most ends of a bout, at least 1
 * @param group ends between two crossings of the counting thread, at least 1
 */
public record WindingWish(int threads, boolean across, int bout, int group) {
  /** Ends between two crossings of the counting thread where nothing else is said; common practice. */
  public static final int USUAL_GROUP = 20;

  private static final int MOST_THREADS = 100;

  public WindingWish {
    if (threads < 1 || threads > MOST_THREADS) {
      throw new Unreadable(Integer.toString(threads), Phrase.of("threads held together from 1 to {0}", MOST_THREADS));
    }
    if (bout < 1) {
      throw new Unreadable(Integer.toString(bout), "a bout of at least 1 end");
    }
    if (group < 1) {
      throw new Unreadable(Integer.toString(group), "a counting group of at least 1 end");
    }
  }

  /** So many threads of one yarn together, in bouts and groups of the usual size. */
  public static WindingWish of(int threads) {
    return new WindingWish(threads, false, Bout.USUAL, USUAL_GROUP);
  }
}
