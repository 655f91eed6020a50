package hankbook.store;

import java.util.UUID;

/** An entry whose row no longer makes an entry: someone changed it behind the program's back. */
public final class IllegibleEntry extends RuntimeException {
  private static final long serialVersionUID = 1L;

  private final long number;
  private final UUID id;
  private final String what;

  IllegibleEntry(long number, UUID id, IllegalArgumentException problem) {
    super("Entry " + number + " (" + id + ") cannot be read: " + problem.getMessage(), problem);
    this.number = number;
    this.id = id;
    this.what = String.valueOf(problem.getMessage());
  }

  /** Its place in the chain. */
  public long number() {
    return number;
  }

  /** Its id. */
  public UUID id() {
    return id;
  }

  /** What about it is not as it can be. */
  public String what() {
    return what;
  }
}
