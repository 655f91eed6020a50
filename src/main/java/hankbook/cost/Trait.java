package hankbook.cost;

/** In what plans that are laid side by side are compared. */
public enum Trait {
  VERDICT("verdict", Better.LEAST),
  RISK("risk", Better.LEAST),
  NEED("need", Better.LEAST),
  LEFT("left", Better.MOST),
  PIECES("pieces", Better.NEITHER),
  ENDS("ends", Better.NEITHER),
  WIDTH_IN_REED("widthInReed", Better.NEITHER),
  WIDTH("width", Better.NEITHER),
  WARP_LENGTH("warpLength", Better.LEAST),
  COST("cost", Better.LEAST),
  EACH("each", Better.LEAST),
  TIME("time", Better.LEAST),
  PUT_UPS("putUps", Better.LEAST),
  SPEND_NOW("spendNow", Better.LEAST);

  /** Which of several a weaver would rather have. */
  public enum Better {
    LEAST,
    MOST,
    /** Neither is: it is a matter of what is wanted. */
    NEITHER
  }

  private final String key;
  private final Better better;

  Trait(String key, Better better) {
    this.key = key;
    this.better = better;
  }

  /** By which it is written into files. */
  public String key() {
    return key;
  }

  public Better better() {
    return better;
  }
}
