package hankbook.allot;

import java.util.ArrayList;
import java.util.List;

/**
 * One way to use a skein (or to leave it): from 0 to {@code most} ends, and for weft {@code weft} less {@code perEnd} for each end.
 *
 * @param after the tally it leads to
 * @param touches whether the skein is touched
 * @param keeps whether it is this skein that sets the remnant aside
 */
record Move(Tally after, boolean touches, boolean keeps, int most, long weft, long perEnd) {
  /** The ways to use a skein whose lot has been given a use. */
  static List<Move> of(Candidate skein, Tally before, Aim aim, Task task, boolean must) {
    List<Move> moves = new ArrayList<>();
    if (!must) {
      moves.add(new Move(before, false, false, 0, 0, 0));
    }
    touching(moves, skein, aim.afterTouching(before, skein, false), task, 0);
    if (aim.remnant() > 0 && !before.kept() && skein.free().tenthsOfMillimetre() >= aim.remnant()) {
      touching(moves, skein, aim.afterTouching(before, skein, true), task, aim.remnant());
    }
    moves.removeIf(move -> !aim.admits(move.after()));
    return moves;
  }

  private static void touching(List<Move> moves, Candidate skein, Tally after, Task task, long setAside) {
    long free = skein.free().tenthsOfMillimetre();
    long usable = free - setAside;
    int most = after.use().warp() ? task.endsFrom(usable) : 0;
    int mostBesideWeft = after.use().weft() && task.weft() > 0 ? Math.min(most, task.endsLeavingWeft(free)) : -1;
    if (mostBesideWeft >= 0) {
      moves.add(new Move(after, true, setAside > 0, mostBesideWeft, usable, task.perEnd()));
    }
    if (most > 0 && most > mostBesideWeft) {
      moves.add(new Move(after, true, setAside > 0, most, 0, 0));
    }
  }

  /** What this move leaves for the weft when so many ends are taken. */
  long weftBeside(int ends) {
    return weft - ends * perEnd;
  }
}
