package hankbook.allot;

/**
 * How much work a search may still do. One step is a microsecond or two of a cold machine's time. Where it is spent, what was not yet settled stays unproven, and the
 * answer says so.
 */
final class Effort {
  private long left;
  private boolean proven = true;

  Effort(long steps) {
    left = steps;
  }

  /** Spends so many steps; false where there are not that many left. */
  boolean spend(long steps) {
    if (steps > left) {
      return refuse();
    }
    left -= steps;
    return true;
  }

  /** Gives something up, always false. What is left stays for the cheaper steps. */
  boolean refuse() {
    proven = false;
    left -= Math.min(left, 1);
    return false;
  }

  /** Leaves no more than so many steps. */
  void atMost(long steps) {
    left = Math.min(left, steps);
  }

  boolean spent() {
    return left == 0;
  }

  boolean proven() {
    return proven;
  }
}
