package hankbook.plan;

import hankbook.measure.Length;
import hankbook.measure.Phrase;
import hankbook.measure.Sett;
import hankbook.measure.Unreadable;
import java.math.BigInteger;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * The warp of a plan as it was entered.
 *
 * @param sett ends to a unit of width in the reed
 * @param ends all ends with the selvedges, where given outright or by sections
 * @param length length of each end, where given outright
 * @param endsMultiple computed ends are rounded up to whole multiples of this, at least 1
 * @param selvedgeEnds ends added at the edges, beside the width, at least 0
 * @param order the groups of ends, at least one
 * @param succession the order as it is written, where it is; then it counts the ends of each group
 * @param selvedge what the selvedge ends are of; without it the order covers them too
 * @param sections the units that make the ends, where they do
 */
public record Warp(
    Sett sett,
    OptionalInt ends,
    Optional<Length> length,
    int endsMultiple,
    int selvedgeEnds,
    List<OrderEntry> order,
    Optional<Succession> succession,
    Optional<Selvedge> selvedge,
    Optional<Sections> sections) {
  public Warp {
    order = List.copyOf(order);
    if (endsMultiple < 1) {
      throw new Unreadable(Integer.toString(endsMultiple), "an ends multiple of at least 1");
    }
    if (selvedgeEnds < 0) {
      throw new Unreadable(Integer.toString(selvedgeEnds), "selvedge ends of at least 0");
    }
    if (selvedge.isPresent() && selvedgeEnds == 0) {
      throw new Unreadable("a selvedge of " + selvedge.get().yarn() + " and no ends of it", "selvedge ends of at least 1 beside it");
    }
    if (ends.isPresent() && ends.getAsInt() <= selvedgeEnds) {
      throw new Unreadable(Integer.toString(ends.getAsInt()), Phrase.of("more ends than the {0} of the selvedges", selvedgeEnds));
    }
    if (length.isPresent() && !length.get().isPositive()) {
      throw new Unreadable(length.get().toString(), "a warp length over zero");
    }
    if (order.isEmpty()) {
      throw new Unreadable("", "an order with at least one yarn");
    }
    checkWritten(succession, order);
    if (sections.isPresent() && ends.orElse(0) != Math.addExact(sections.get().ends(), selvedgeEnds)) {
      throw new IllegalArgumentException("ends of a warp of " + sections.get().units() + " units are " + ends);
    }
  }

  /** Without a written order, with selvedges of the order's yarns, and no units. */
  public Warp(Sett sett, OptionalInt ends, Optional<Length> length, int endsMultiple, int selvedgeEnds, List<OrderEntry> order) {
    this(sett, ends, length, endsMultiple, selvedgeEnds, order, Optional.empty(), Optional.empty(), Optional.empty());
  }

  private static void checkWritten(Optional<Succession> succession, List<OrderEntry> order) {
    if (succession.isPresent()) {
      WarpOrder.checkWritten(succession.get(), order);
    } else if (order.stream().anyMatch(entry -> entry.amount() instanceof OrderEntry.Written)) {
      throw new Unreadable("", "either ends or share");
    }
  }

  /** How many of so many ends the order has to account for: all, or all but the selvedges where these are of their own yarn. */
  int ordered(int total) {
    return selvedge.isPresent() ? total - selvedgeEnds : total;
  }

  /** By how many ends it is made narrower or wider: whole multiples, and whole units where it is made of them. */
  public int endsStep() {
    int unit = sections.map(Sections::endsPerUnit).orElse(1);
    int shared = BigInteger.valueOf(endsMultiple).gcd(BigInteger.valueOf(unit)).intValueExact();
    return Math.multiplyExact(endsMultiple / shared, unit);
  }

  /** The same warp with other units, which make its ends, in this order. */
  Warp with(Sections changed, List<OrderEntry> groups, Optional<Succession> written) {
    OptionalInt total = OptionalInt.of(Math.addExact(changed.ends(), selvedgeEnds));
    return new Warp(sett, total, length, endsMultiple, selvedgeEnds, groups, written, selvedge, Optional.of(changed));
  }

  /** The same warp at another sett. */
  Warp withSett(Sett other) {
    return new Warp(other, ends, length, endsMultiple, selvedgeEnds, order, succession, selvedge, sections);
  }

  /** The same warp with its length given outright, or left to the pieces. */
  Warp withLength(Optional<Length> other) {
    return new Warp(sett, ends, other, endsMultiple, selvedgeEnds, order, succession, selvedge, sections);
  }

  /** The same warp with its ends given outright and not by units. */
  Warp withEnds(int all) {
    return new Warp(sett, OptionalInt.of(all), length, endsMultiple, selvedgeEnds, order, succession, selvedge, Optional.empty());
  }

  /** The same warp in another order, which may be written. */
  Warp withOrder(List<OrderEntry> groups, Optional<Succession> written) {
    return new Warp(sett, ends, length, endsMultiple, selvedgeEnds, groups, written, selvedge, sections);
  }

  /** The same warp with other selvedges. */
  Warp withSelvedge(Optional<Selvedge> other) {
    return new Warp(sett, ends, length, endsMultiple, selvedgeEnds, order, succession, other, sections);
  }
}
