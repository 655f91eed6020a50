package hankbook.studio;

import hankbook.ledger.ChainedEntry;
import hankbook.ledger.Place;
import hankbook.ledger.Transfer;
import hankbook.measure.Length;
import java.util.Optional;

/**
 * A recount that found over a tenth more or less than was known: perhaps a slip.
 *
 * @param skein its code
 * @param entry the number of the recount in the journal
 * @param found what the house holds of it now, without what is on a loom
 * @param book what the book had before; empty where it had nothing, or near enough the same
 * @param label what its label says; empty where it has none, or what was found agrees with it: less is right once some was used
 */
public record FarOff(String skein, long entry, Length found, Optional<Length> book, Optional<Length> label) {
  private static final int TENTH = 10;

  /** What a recount that was entered lies far from; empty where it lies far from nothing. */
  static Optional<FarOff> of(ChainedEntry recount, ShelfSkein after) {
    Length found = after.free().plus(after.allReserved());
    Length more = recount.entry().transfers().stream().map(FarOff::more).reduce(Length.ZERO, Length::plus);
    Optional<Length> book = Optional.of(found.minus(more)).filter(before -> before.isPositive() && differ(before, found));
    Optional<Length> label = after.skein().label().filter(printed -> differ(printed, found) && (found.compareTo(printed) > 0 || !after.skein().opened()));
    FarOff farOff = new FarOff(after.skein().code(), recount.number(), found, book, label);
    return book.isPresent() || label.isPresent() ? Optional.of(farOff) : Optional.empty();
  }

  private static Length more(Transfer transfer) {
    return transfer.to() instanceof Place.Shelf ? transfer.length() : transfer.length().negated();
  }

  private static boolean differ(Length known, Length found) {
    return Math.multiplyExact(Math.abs(found.minus(known).tenthsOfMillimetre()), TENTH) > known.tenthsOfMillimetre();
  }
}
