package hankbook.allot;

import java.util.Arrays;

/** For each number of ends that some skeins can give, the most they can give for the weft beside them. */
final class Frontier {
  private static final long IMPOSSIBLE = -1;

  private final long[] weft;

  private Frontier(long[] weft) {
    this.weft = weft;
  }

  /** No number of ends up to this can be given. */
  static Frontier impossible(int mostEnds) {
    long[] weft = new long[mostEnds + 1];
    Arrays.fill(weft, IMPOSSIBLE);
    return new Frontier(weft);
  }

  /** No skeins: no ends, no weft. */
  static Frontier start(int mostEnds) {
    Frontier start = impossible(mostEnds);
    start.weft[0] = 0;
    return start;
  }

  int mostEnds() {
    return weft.length - 1;
  }

  boolean possible(int ends) {
    return weft[ends] != IMPOSSIBLE;
  }

  long weft(int ends) {
    return weft[ends];
  }

  /**
   * Raises this to what another gives with a move added: for each number of ends, the best split between the two. The splits form a window
   * that slides along the other frontier; its best is kept in a queue of falling worth, so the work does not grow with the ends a skein holds.
   */
  void raise(Frontier from, Move move) {
    int[] queue = new int[weft.length];
    int head = 0;
    int tail = 0;
    for (int ends = 0; ends < weft.length; ends++) {
      if (from.possible(ends)) {
        while (tail > head && from.worth(queue[tail - 1], move) <= from.worth(ends, move)) {
          tail--;
        }
        queue[tail++] = ends;
      }
      if (tail > head && queue[head] < ends - move.most()) {
        head++;
      }
      if (tail > head) {
        weft[ends] = Math.max(weft[ends], from.weft[queue[head]] + move.weftBeside(ends - queue[head]));
      }
    }
  }

  private long worth(int ends, Move move) {
    return weft[ends] + ends * move.perEnd();
  }

  /** Strikes out what could not reach the aim even if so much more were covered; tells whether anything is left. */
  boolean prune(Task task, long uncovered, long coverableYet) {
    boolean left = false;
    for (int ends = 0; ends < weft.length; ends++) {
      if (possible(ends) && task.uncovered(ends, weft[ends]) - coverableYet > uncovered) {
        weft[ends] = IMPOSSIBLE;
      }
      left |= possible(ends);
    }
    return left;
  }

  /** The number of ends at which least is left uncovered, the most of equals; -1 where nothing is possible. */
  int best(Task task) {
    int best = -1;
    for (int ends = 0; ends < weft.length; ends++) {
      // A warp short of weft can be woven shorter, one short of ends cannot be threaded.
      if (possible(ends) && (best < 0 || uncovered(task, ends) <= uncovered(task, best))) {
        best = ends;
      }
    }
    return best;
  }

  /** The least left uncovered, of a frontier where something is possible. */
  long leastUncovered(Task task) {
    return uncovered(task, best(task));
  }

  private long uncovered(Task task, int ends) {
    return task.uncovered(ends, weft[ends]);
  }
}
