package hankbook.desktop;

import hankbook.desktop.say.Say;
import hankbook.studio.FinishList;

/**
 * A plan in the list after the cloth.
 *
 * @param plan its name
 * @param isSquared whether its book is squared
 * @param words how it stands
 * @param heading over it, where it is the first of its sort; else empty
 */
record AfterRow(String plan, boolean isSquared, String words, String heading) {
  static AfterRow of(FinishList.Waiting waiting, boolean isFirst) {
    String onLoom = Wording.metres(waiting.onLoom());
    String words = waiting.isBegun() ? Say.text("{0} on the loom, begun to be filled in", onLoom) : Say.text("{0} on the loom", onLoom);
    return new AfterRow(waiting.plan(), false, words, isFirst ? Say.text("On the loom") : "");
  }

  static AfterRow of(FinishList.Closed closed, boolean isFirst) {
    String words = closed.isBegun() ? Say.text("cut off {0}, begun to be finished again", closed.date()) : Say.text("cut off {0}", closed.date());
    return new AfterRow(closed.plan(), true, words, isFirst ? Say.text("Squared") : "");
  }

  /** Whether it is the same plan in the same state. */
  boolean isSame(AfterRow other) {
    return plan.equals(other.plan()) && isSquared == other.isSquared();
  }
}
