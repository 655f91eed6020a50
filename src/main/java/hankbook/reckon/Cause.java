package hankbook.reckon;

/** Why a cloth takes more or less of a yarn than was planned, in the order in which what was found takes the place of what was planned. */
public enum Cause {
  /** Ends counted. More of them stand wider, and take more weft. */
  ENDS("ends", "ends"),
  /** The warp as it was wound, and the cloth that was woven in it, as far as the next four do not tell of them. */
  WARP_LENGTH("warpLength", "warp length"),
  /** What the cloth lost in length after the loom, so that more or less of it had to be woven. */
  SHRINKAGE("shrinkage", "shrinkage"),
  /** What the cloth took up of the warp. */
  TAKE_UP("takeUp", "take-up"),
  /** Warp given to sampling, and the weft in it. */
  SAMPLING("sampling", "sampling"),
  /** Warp that could not be woven. */
  LOOM_WASTE("loomWaste", "loom waste"),
  /** Ends that broke and were mended. */
  REPAIRS("repairs", "repairs"),
  /** Picks counted. */
  WEFT_COUNT("weftCount", "weft count"),
  /** The width in the reed. */
  WEFT_WIDTH("weftWidth", "weft width"),
  /** As much of the rest as the uncertainty of what was drawn and left explains. */
  MEASUREMENT("measurement", "measurement"),
  /** What nothing explains: among it winding and the take-up of the weft, which are known only by what was used. */
  UNEXPLAINED("unexplained", "unexplained");

  private final String key;
  private final String words;

  Cause(String key, String words) {
    this.key = key;
    this.words = words;
  }

  /** Its name in files. */
  public String key() {
    return key;
  }

  /** What it is called. */
  public String words() {
    return words;
  }
}
