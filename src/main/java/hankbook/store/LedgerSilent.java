package hankbook.store;

/** An open ledger no longer answers: its server went away, or the way to it. Whether what was just asked of it was done is not known. */
public final class LedgerSilent extends RuntimeException {
  private static final long serialVersionUID = 1L;

  LedgerSilent(LedgerAddress address, Throwable cause) {
    super(
        "The ledger " + address.text() + " does not answer any more; see that its server runs, then look into the journal whether the last thing was written.",
        cause);
  }

  /** The reason in the user's words. */
  public String message() {
    return String.valueOf(getMessage());
  }
}
