package hankbook.plan;

import hankbook.measure.Unreadable;
import hankbook.yarn.YarnColour;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * A group of ends of one yarn in the order of a warp.
 *
 * @param yarn the yarn and its colour
 * @param amount how many ends, or which part of those left
 * @param strands threads that go as one end, at least 1
 */
public record OrderEntry(YarnColour yarn, Amount amount, int strands) {
  /** Ends counted outright, or as a share of the ends that no count claims. */
  public sealed interface Amount {}

  /** So many ends, at least 0. */
  public record Ends(int ends) implements Amount {}

  /** A part of what is left, from 0 to 1. */
  public record Share(BigFraction part) implements Amount {
    public Share {
      if (part.signum() < 0 || part.compareTo(BigFraction.ONE) > 0) {
        throw new Unreadable(part.toString(), "a share from 0 to 1");
      }
    }
  }

  public OrderEntry {
    if (strands < 1) {
      throw new Unreadable(Integer.toString(strands), "strands of at least 1");
    }
  }

  /** The same group of another yarn. */
  public OrderEntry withYarn(YarnColour other) {
    return new OrderEntry(other, amount, strands);
  }

  /** The same group of so many ends. */
  public OrderEntry withEnds(int ends) {
    return new OrderEntry(yarn, new Ends(ends), strands);
  }
}
