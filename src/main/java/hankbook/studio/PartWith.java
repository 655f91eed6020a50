package hankbook.studio;

import hankbook.ledger.ChainedEntry;
import hankbook.ledger.EntryKind;
import hankbook.ledger.Place;
import hankbook.measure.Length;
import java.util.Optional;
import java.util.UUID;

/** Writes off what was sold, given or lost. */
public final class PartWith {
  private final Studio studio;

  public PartWith(Studio studio) {
    this.studio = studio;
  }

  /**
   * Parts with some of a skein.
   *
   * @param note to whom or how; may be empty
   * @throws NotDone if so much of it is not on the shelf
   */
  public Optional<ChainedEntry> skein(UUID id, String code, Length length, String note) throws NotDone {
    return new SkeinYarn(studio, id, EntryKind.PART_WITH, code, Note.of(note)).move(new Place.Shelf(), new Place.Away(), length);
  }
}
