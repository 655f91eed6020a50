package hankbook.desktop;

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
    String begun = waiting.isBegun() ? ", begun to be filled in" : "";
    return new AfterRow(waiting.plan(), false, Wording.metres(waiting.onLoom()) + " on the loom" + begun, isFirst ? "On the loom" : "");
  }

  static AfterRow of(FinishList.Closed closed, boolean isFirst) {
    String begun = closed.isBegun() ? ", begun to be finished again" : "";
    return new AfterRow(closed.plan(), true, "cut off " + closed.date() + begun, isFirst ? "Squared" : "");
  }

  /** Whether it is the same plan in the same state. */
  boolean isSame(AfterRow other) {
    return plan.equals(other.plan()) && isSquared == other.isSquared();
  }
}
