package hankbook.plan;

import hankbook.measure.Length;
import hankbook.measure.Unreadable;

/**
 * One kind of thing cut from the warp.
 *
 * @param name what it is called
 * @param count how many, at least 1
 * @param length finished length, over zero
 * @param width finished width, over zero
 * @param hems woven beside the finished length, both ends together
 * @param fringe left unwoven, both ends together
 */
public record Piece(String name, int count, Length length, Length width, Length hems, Length fringe) {
  public Piece {
    if (count < 1) {
      throw new Unreadable(Integer.toString(count), "a count of at least 1");
    }
    if (!length.isPositive()) {
      throw new Unreadable(length.toString(), "a finished length over zero");
    }
    if (!width.isPositive()) {
      throw new Unreadable(width.toString(), "a finished width over zero");
    }
  }

  /** So many of the same piece. */
  public Piece withCount(int other) {
    return new Piece(name, other, length, width, hems, fringe);
  }

  /** The same piece of another finished length. */
  public Piece withLength(Length other) {
    return new Piece(name, count, other, width, hems, fringe);
  }

  /** The same piece of another finished width. */
  public Piece withWidth(Length other) {
    return new Piece(name, count, length, other, hems, fringe);
  }
}
