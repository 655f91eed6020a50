package hankbook.allot;

import java.util.List;

/**
 * What a choice of skeins has to achieve. A count that may be anything is {@link #ANY} and is not kept apart in the search, which keeps the
 * early, loose searches small.
 *
 * @param uncovered at most so many tenths of a millimetre left uncovered
 * @param lots at most so many dye lots, counted per use
 * @param unopened at most so many unopened skeins broken into
 * @param touched at most so many skeins touched
 * @param remnant at least so many tenths of a millimetre left in some touched skein; 0 asks for nothing
 */
record Aim(long uncovered, int lots, int unopened, int touched, long remnant) {
  static final int ANY = Integer.MAX_VALUE;

  /** Content with any choice at all. */
  static final Aim NONE = new Aim(Long.MAX_VALUE, ANY, ANY, ANY, 0);

  Aim uncoveredAtMost(long length) {
    return new Aim(length, lots, unopened, touched, remnant);
  }

  Aim lotsAtMost(long count) {
    return new Aim(uncovered, Math.toIntExact(count), unopened, touched, remnant);
  }

  Aim unopenedAtMost(long count) {
    return new Aim(uncovered, lots, Math.toIntExact(count), touched, remnant);
  }

  Aim touchedAtMost(long count) {
    return new Aim(uncovered, lots, unopened, Math.toIntExact(count), remnant);
  }

  Aim remnantAtLeast(long length) {
    return new Aim(uncovered, lots, unopened, touched, length);
  }

  boolean admits(Tally tally) {
    return tally.lots() <= lots && tally.unopened() <= unopened && tally.touched() <= touched;
  }

  /** The uses worth trying for a lot: where lots are not counted, being free to do both loses nothing. */
  List<Use> uses(Task task) {
    if (task.weft() == 0) {
      return List.of(Use.NONE, Use.WARP);
    }
    if (task.ends() == 0) {
      return List.of(Use.NONE, Use.WEFT);
    }
    return lots == ANY ? List.of(Use.BOTH) : List.of(Use.values());
  }

  /** The tally after a lot is given a use. */
  Tally afterOpening(Tally before, Use use) {
    int more = lots == ANY ? 0 : use.lots();
    return new Tally(before.lots() + more, before.unopened(), before.touched(), before.kept(), use);
  }

  /** The tally after a skein of the present lot is touched. */
  Tally afterTouching(Tally before, Candidate skein, boolean keeps) {
    int more = touched == ANY ? 0 : 1;
    int broken = unopened == ANY || skein.opened() ? 0 : 1;
    return new Tally(before.lots(), before.unopened() + broken, before.touched() + more, before.kept() || keeps, before.use());
  }
}
