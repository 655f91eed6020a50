package hankbook.desktop;

import hankbook.studio.Studio;
import java.util.Optional;

/** Everything that can be done with the chosen skein. */
public record SkeinDeeds(
    Recounting recounting, Sampling sampling, Parting parting, WindingOff windingOff, Joining joining, Moving moving, Describing describing, Returning returning) {
  /** @param shelf whose chosen skein they are about, and which is read anew after each of them */
  static SkeinDeeds of(Studio studio, Work work, Status status, ShelfModel shelf) {
    return new SkeinDeeds(
        new Recounting(studio, work, status, shelf::refresh), new Sampling(studio, work, status, shelf), new Parting(studio, work, status, shelf::refresh),
        new WindingOff(studio, work, status, shelf), new Joining(studio, work, status, shelf), new Moving(studio, work, status, shelf),
        new Describing(studio, work, status, shelf::refresh), new Returning(studio, work, status, shelf::refresh));
  }

  /** Whether something is typed that stands in no ledger yet. */
  boolean isBegun() {
    return recounting.isBegun() || sampling.isBegun() || parting.isBegun() || windingOff.isBegun() || moving.isBegun() || describing.isBegun() || returning.isBegun();
  }

  /** Turns all of them to a skein, or to none. */
  void turnTo(Optional<SkeinRow> row) {
    recounting.turnTo(row);
    sampling.turnTo(row);
    parting.turnTo(row);
    windingOff.turnTo(row);
    joining.turnTo(row);
    moving.turnTo(row);
    describing.turnTo(row);
    returning.turnTo(row);
  }
}
