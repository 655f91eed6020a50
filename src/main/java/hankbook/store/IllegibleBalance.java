package hankbook.store;

/** A balance whose row names no place: someone changed it behind the program's back. */
public final class IllegibleBalance extends RuntimeException {
  private static final long serialVersionUID = 1L;

  private final String skein;
  private final String what;

  IllegibleBalance(String skein, IllegalArgumentException problem) {
    super("A balance of " + skein + " cannot be read: " + problem.getMessage(), problem);
    this.skein = skein;
    this.what = String.valueOf(problem.getMessage());
  }

  /** The code of its skein. */
  public String skein() {
    return skein;
  }

  /** What about it is not as it can be. */
  public String what() {
    return what;
  }
}
