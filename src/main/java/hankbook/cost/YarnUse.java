package hankbook.cost;

/** What becomes of a plan's yarn. */
public enum YarnUse {
  /** Warp in the cloth, with take-up, shrinkage, hems, fringes, gaps and what the warp's length is rounded up by. */
  WARP("warp", "Warp"),
  /** Weft in the cloth. */
  WEFT("weft", "Weft"),
  /** Warp and weft of the sampling. */
  SAMPLING("sampling", "Sampling"),
  /** Warp that cannot be woven. */
  LOOM_WASTE("loomWaste", "Loom waste"),
  /** Spare ends for mending. */
  REPAIRS("repairs", "Repair ends"),
  /** Lost when the warp is wound. */
  WINDING("winding", "Lost in winding");

  private final String key;
  private final String words;

  YarnUse(String key, String words) {
    this.key = key;
    this.words = words;
  }

  /** Its name in files. */
  public String key() {
    return key;
  }

  /** Its name as a heading. */
  public String words() {
    return words;
  }
}
