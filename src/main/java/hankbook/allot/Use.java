package hankbook.allot;

/** What the skeins of a dye lot may serve for; each use counts as a lot, since warp and weft are seen apart. */
enum Use {
  NONE(false, false),
  WARP(true, false),
  WEFT(false, true),
  BOTH(true, true);

  private final boolean warp;
  private final boolean weft;

  Use(boolean warp, boolean weft) {
    this.warp = warp;
    this.weft = weft;
  }

  boolean warp() {
    return warp;
  }

  boolean weft() {
    return weft;
  }

  int lots() {
    return (warp ? 1 : 0) + (weft ? 1 : 0);
  }
}
