package hankbook.studio;

import hankbook.ledger.ChainedEntry;
import hankbook.ledger.EntryKind;
import hankbook.ledger.Place;
import hankbook.measure.Phrase;
import hankbook.yarn.OneLine;
import java.util.Optional;
import java.util.UUID;

/** Gives back to the shelf what was promised to a plan. */
public final class Release {
  private final Studio studio;

  public Release(Studio studio) {
    this.studio = studio;
  }

  /**
   * Releases all that is reserved for a plan.
   *
   * @throws NotDone if nothing is
   */
  public Optional<ChainedEntry> plan(UUID id, String plan) throws NotDone {
    String name = OneLine.of(plan);
    return new PlanYarn(studio, EntryKind.RELEASE, new Place.Reserved(name), new Place.Shelf())
        .move(id, Phrase.of("Nothing is reserved for {0}, so there is nothing to release.", name));
  }
}
