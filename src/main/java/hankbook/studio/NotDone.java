package hankbook.studio;

/** Nothing was changed; the message says why, in the user's words. */
public final class NotDone extends Exception {
  private static final long serialVersionUID = 1L;

  public NotDone(String message) {
    super(message);
  }
}
