package hankbook.studio;

/** Something could not be done, and nothing was changed; the message says why in the user's words. */
public final class NotDone extends Exception {
  private static final long serialVersionUID = 1L;

  private final boolean yarnIsShort;

  private NotDone(String message, boolean yarnIsShort) {
    super(message);
    this.yarnIsShort = yarnIsShort;
  }

  static NotDone because(String message) {
    return new NotDone(message, false);
  }

  static NotDone shortOfYarn(String message) {
    return new NotDone(message, true);
  }

  /** Whether the reason is that a yarn is short. */
  public boolean yarnIsShort() {
    return yarnIsShort;
  }
}
