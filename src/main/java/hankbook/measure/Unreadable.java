package hankbook.measure;

/**
 * A text or number that is not the quantity it should be. It carries what was found and what is wanted apart, so that a file reader
 * can add where it stood and a screen can say it beside the field.
 */
public final class Unreadable extends IllegalArgumentException {
  private static final long serialVersionUID = 1L;

  private final String found;
  /** Transient only because its values do not promise that they can be serialised. */
  private final transient Phrase wanted;

  /**
   * @param found the rejected value as it was written
   * @param wanted what would have been accepted, as a noun phrase ("a length such as 70 cm")
   */
  public Unreadable(String found, String wanted) {
    this(found, Phrase.of(wanted));
  }

  /**
   * @param found the rejected value as it was written
   * @param wanted what would have been accepted, as a noun phrase with values in it
   */
  public Unreadable(String found, Phrase wanted) {
    super("found " + quoted(found) + ", wanted " + wanted.english());
    this.found = found;
    this.wanted = wanted;
  }

  /** The rejected value as it was written. */
  public String found() {
    return found;
  }

  /** What would have been accepted. */
  public String wanted() {
    return wanted.english();
  }

  /** The same, to be said in any language. */
  public Phrase phrase() {
    return wanted;
  }

  private static String quoted(String found) {
    return found.isBlank() ? "nothing" : "'" + found + "'";
  }
}
