package hankbook.studio;

import hankbook.ledger.ChainedEntry;
import hankbook.ledger.EntryKind;
import hankbook.ledger.Place;
import hankbook.yarn.OneLine;
import java.util.Optional;
import java.util.UUID;

/** Takes yarn onto the loom. */
public final class Draw {
  private final Studio studio;

  public Draw(Studio studio) {
    this.studio = studio;
  }

  /**
   * Takes all that is reserved for a plan onto its loom.
   *
   * @throws NotDone if nothing is reserved
   */
  public Optional<ChainedEntry> plan(UUID id, String plan) throws NotDone {
    String name = OneLine.of(plan);
    return new PlanYarn(studio, EntryKind.DRAW, new Place.Reserved(name), new Place.Loom(name))
        .move(id, "Nothing is reserved for " + name + "; reserve its yarn before it is wound.");
  }
}
