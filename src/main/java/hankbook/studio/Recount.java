package hankbook.studio;

import hankbook.ledger.ChainedEntry;
import hankbook.ledger.EntryKind;
import hankbook.ledger.Holding;
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
   * Corrects what the shelf holds of a skein to what was found there.
   *
   * @param found on the shelf now, without what is reserved or on a loom; zero or more
   * @param note how it was found; may be empty
   * @return the correction; nothing where the book was right
   * @throws NotDone if there is no such skein
   */
  public Optional<ChainedEntry> skein(UUID id, String code, Length found, String note) throws NotDone {
    if (found.isNegative()) {
      throw NotDone.because("A skein cannot hold less than nothing; found is " + found + ".");
    }
    return studio.write(session -> correct(session, new SkeinYarn(studio, id, EntryKind.RECOUNT, code, note), found));
  }

  private static Optional<ChainedEntry> correct(Session session, SkeinYarn skein, Length found) throws NotDone {
    Place shelf = new Place.Shelf();
    Place recount = new Place.Recount();
    Length more = found.minus(session.entries().balance(new Holding(skein.code(), shelf)));
    if (more.isZero() && session.skeins().find(skein.code()).isPresent()) {
      return Optional.empty();
    }
    return more.isNegative() ? skein.move(session, shelf, recount, more.negated()) : skein.move(session, recount, shelf, more);
  }
}
