package hankbook.allot;

/**
 * A skein in a choice.
 *
 * @param skein the skein
 * @param role what it may serve for
 * @param setAside what of it must stay, in tenths of a millimetre
 */
record Slot(Candidate skein, long role, long setAside) {
  long free() {
    return skein.free().tenthsOfMillimetre();
  }

  long usable() {
    return free() - setAside;
  }

  Slot keeping(long length) {
    return new Slot(skein, role, length);
  }
}
