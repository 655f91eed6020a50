package hankbook.plan;

/** The kinds of work that a cloth takes, each counted by what it is done to. */
public enum WorkKind {
  WINDING("winding", Per.END),
  BEAMING("beaming", Per.END),
  THREADING("threading", Per.END),
  SLEYING("sleying", Per.END),
  WEAVING("weaving", Per.PICK),
  FINISHING("finishing", Per.PIECE);

  /** What a kind of work is counted by. */
  public enum Per {
    END,
    PICK,
    PIECE
  }

  private final String key;
  private final Per per;

  WorkKind(String key, Per per) {
    this.key = key;
    this.per = per;
  }

  /** Its name in files, which is also the word for it. */
  public String key() {
    return key;
  }

  /** What it is counted by. */
  public Per per() {
    return per;
  }
}
