package hankbook.plan;

import hankbook.measure.Length;
import hankbook.measure.Sett;
import hankbook.measure.Unreadable;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * The warp of a plan as it was entered.
 *
 * @param sett ends to a unit of width in the reed
 * @param ends all ends with the selvedges, where given outright
 * @param length length of each end, where given outright
 * @param endsMultiple computed ends are rounded up to whole multiples of this, at least 1
 * @param selvedgeEnds ends added at the edges, beside the width, at least 0
 * @param order the groups of ends, at least one
 */
public record Warp(Sett sett, OptionalInt ends, Optional<Length> length, int endsMultiple, int selvedgeEnds, List<OrderEntry> order) {
  public Warp {
    order = List.copyOf(order);
    if (endsMultiple < 1) {
      throw new Unreadable(Integer.toString(endsMultiple), "an ends multiple of at least 1");
    }
    if (selvedgeEnds < 0) {
      throw new Unreadable(Integer.toString(selvedgeEnds), "selvedge ends of at least 0");
    }
    if (ends.isPresent() && ends.getAsInt() <= selvedgeEnds) {
      throw new Unreadable(Integer.toString(ends.getAsInt()), "more ends than the " + selvedgeEnds + " of the selvedges");
    }
    if (length.isPresent() && !length.get().isPositive()) {
      throw new Unreadable(length.get().toString(), "a warp length over zero");
    }
    if (order.isEmpty()) {
      throw new Unreadable("", "an order with at least one yarn");
    }
  }

  /** The same warp at another sett. */
  public Warp withSett(Sett other) {
    return new Warp(other, ends, length, endsMultiple, selvedgeEnds, order);
  }

  /** The same warp with its ends given outright. */
  public Warp withEnds(int all) {
    return new Warp(sett, OptionalInt.of(all), length, endsMultiple, selvedgeEnds, order);
  }

  /** The same warp with its length given outright, or left to the pieces. */
  public Warp withLength(Optional<Length> other) {
    return new Warp(sett, ends, other, endsMultiple, selvedgeEnds, order);
  }

  /** The same warp in another order. */
  public Warp withOrder(List<OrderEntry> other) {
    return new Warp(sett, ends, length, endsMultiple, selvedgeEnds, other);
  }
}
