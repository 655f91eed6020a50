package hankbook.studio;

import hankbook.ledger.ChainedEntry;
import hankbook.ledger.EntryKind;
import hankbook.ledger.Place;
import hankbook.measure.Length;
import hankbook.yarn.OneLine;
import java.util.Optional;
import java.util.UUID;

/** Puts back on the shelf what the loom did not use. */
public final class Return {
  private final Studio studio;

  public Return(Studio studio) {
    this.studio = studio;
  }

  /**
   * Returns some of a skein from a plan's loom.
   *
   * @throws NotDone if so much of it is not there
   */
  public Optional<ChainedEntry> skein(UUID id, String plan, String code, Length length) throws NotDone {
    return new SkeinYarn(studio, id, EntryKind.RETURN, code, "").move(new Place.Loom(OneLine.of(plan)), new Place.Shelf(), length);
  }
}
