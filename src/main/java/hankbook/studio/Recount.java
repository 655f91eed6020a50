package hankbook.studio;

import hankbook.ledger.ChainedEntry;
import hankbook.ledger.EntryKind;
import hankbook.ledger.Place;
import hankbook.measure.Length;
import hankbook.store.Session;
import java.util.Optional;
import java.util.UUID;

/** Puts the book right after a skein was weighed or measured again. */
public final class Recount {
  private final Studio studio;

  public Recount(Studio studio) {
    this.studio = studio;
  }

  /**
   * Corrects what the house holds of a skein to what was found: all that is wound on it still, with what is reserved for plans, without what is on a loom.
   *
   * @param found zero or more
   * @param note how it was found; may be empty
   * @return the correction; nothing where the book was right
   * @throws NotDone if there is no such skein, or less of it was found than is reserved
   */
  public Optional<ChainedEntry> skein(UUID id, String code, Length found, String note) throws NotDone {
    if (found.isNegative()) {
      throw NotDone.because("A skein cannot hold less than nothing; found is " + found + ".");
    }
    SkeinYarn skein = new SkeinYarn(studio, id, EntryKind.RECOUNT, code, Note.of(note));
    return studio.write(session -> correct(session, skein, found));
  }

  private static Optional<ChainedEntry> correct(Session session, SkeinYarn skein, Length found) throws NotDone {
    Optional<ShelfSkein> held = Shelf.skein(session, skein.code());
    Length reserved = held.map(ShelfSkein::allReserved).orElse(Length.ZERO);
    if (ExpectedYarn.isOnOrder(session, skein.code())) {
      throw NotDone.because(skein.code() + " is still on order; say that it arrived before it is measured.");
    }
    if (found.compareTo(reserved) < 0) {
      throw NotDone.because(
          "Of " + skein.code() + " " + reserved + " are reserved for plans, more than the " + found + " that were found; release what lacks first, then measure again.");
    }
    Place shelf = new Place.Shelf();
    Place recount = new Place.Recount();
    Length more = found.minus(reserved).minus(held.map(ShelfSkein::free).orElse(Length.ZERO));
    if (more.isZero() && held.isPresent()) {
      return Optional.empty();
    }
    return more.isNegative() ? skein.move(session, shelf, recount, more.negated()) : skein.move(session, recount, shelf, more);
  }
}
