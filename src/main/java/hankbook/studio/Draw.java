package hankbook.studio;

import hankbook.exchange.BadInput;
import hankbook.ledger.ChainedEntry;
import hankbook.ledger.EntryKind;
import hankbook.ledger.Place;
import hankbook.ledger.Transfer;
import hankbook.measure.Length;
import hankbook.measure.Phrase;
import hankbook.store.Session;
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
   * @throws NotDone if nothing is reserved, the book of the plan is squared, or less than the plan would take as it is now: a warp is wound in one go
   */
  public Optional<ChainedEntry> plan(UUID id, String plan) throws NotDone {
    String name = OneLine.of(plan);
    PlanYarn reserved = new PlanYarn(studio, EntryKind.DRAW, new Place.Reserved(name), new Place.Loom(name));
    return studio.write(session -> {
      boolean done = session.entries().entry(id).isPresent();
      if (!done) {
        FinishedPlans.refuseIfSquared(session, name);
      }
      Optional<ChainedEntry> drawn = reserved.move(session, id, Phrase.of("Nothing is reserved for {0}; reserve its yarn before it is wound.", name));
      if (!done) {
        refuseIfItLacks(session, name);
      }
      return drawn;
    });
  }

  private void refuseIfItLacks(Session session, String name) throws NotDone {
    Length lacks = lacks(session, name);
    if (lacks.isPositive()) {
      throw NotDone.because(
          "What is reserved for {0} is {1} less than it takes as it is now; reserve again, then draw. Nothing was drawn.", name, Phrase.yarn(lacks, 1));
    }
  }

  private Length lacks(Session session, String name) throws NotDone {
    try {
      Reservation wanted = Reservation.of(CheckPlan.named(studio, name, session).check(), Shelf.everySkein(session));
      return wanted.lacking().stream().map(Transfer::length).reduce(Length.ZERO, Length::plus);
    } catch (BadInput unfinished) {
      throw NotDone.because("{0} cannot be reckoned as it is now; mend it and reserve again before it is wound. Nothing was drawn.", name);
    }
  }
}
