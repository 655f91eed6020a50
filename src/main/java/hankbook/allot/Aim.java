package hankbook.allot;

/**
 * What a choice of skeins has to achieve. A count that may be anything is {@link #ANY}.
 *
 * @param uncovered at most so many tenths of a millimetre left uncovered
 * @param lots at most so many dye lots, counted apart in warp and weft
 * @param unopened at most so many unopened skeins broken into
 * @param touched at most so many skeins touched
 * @param remnant at least so many tenths of a millimetre left in some touched skein; 0 asks for nothing
 */
record Aim(long uncovered, int lots, int unopened, int touched, long remnant) {
  static final int ANY = Integer.MAX_VALUE;

  static Aim uncoveredAtMost(long length) {
    return new Aim(length, ANY, ANY, ANY, 0);
  }

  Aim lotsAtMost(int count) {
    return new Aim(uncovered, count, unopened, touched, remnant);
  }

  Aim unopenedAtMost(int count) {
    return new Aim(uncovered, lots, count, touched, remnant);
  }

  Aim touchedAtMost(int count) {
    return new Aim(uncovered, lots, unopened, count, remnant);
  }

  Aim remnantAtLeast(long length) {
    return new Aim(uncovered, lots, unopened, touched, length);
  }
}
