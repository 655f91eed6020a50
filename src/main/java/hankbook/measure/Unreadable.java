package hankbook.measure;

/**
 * A text or number that is not the quantity it should be. It carries what was found and what is wanted apart, so that a file reader
 * can add where it stood and a screen can say it beside the field.
 */
public final class Unreadable extends IllegalArgumentException {
  private static final long serialVersionUID = 1L;

  private final String found;
  private final String wanted;

  /**
   * @param found the rejected value as it was written
   * @param wanted what would have been accepted, as a noun phrase ("a length such as 70 cm")
   */
  public Unreadable(String found, String wanted) {
    super("found " + quoted(found) + ", wanted " + wanted);
    this.found = found;
    this.wanted = wanted;
  }

  /** The rejected value as it was written. */
  public String found() {
    return found;
  }

  /** What would have been accepted. */
  public String wanted() {
    return wanted;
  }

  private static String quoted(String found) {
    return found.isBlank() ? "nothing" : "'" + found + "'";
  }
}
