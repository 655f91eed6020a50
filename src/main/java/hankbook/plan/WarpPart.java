package hankbook.plan;

/** What a stretch of the warp becomes. The parts of a warp sum to its length. */
public enum WarpPart {
  CLOTH("cloth"),
  HEMS("hems"),
  SHRINKAGE("shrinkage"),
  TAKE_UP("takeUp"),
  FRINGE("fringe"),
  GAPS("gaps"),
  SAMPLING("sampling"),
  LOOM_WASTE("loomWaste"),
  ROUNDING("rounding");

  private final String key;

  WarpPart(String key) {
    this.key = key;
  }

  /** The part's name in files. */
  public String key() {
    return key;
  }
}
