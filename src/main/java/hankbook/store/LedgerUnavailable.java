package hankbook.store;

import org.jspecify.annotations.Nullable;

/** A ledger cannot be opened; the message is one sentence that says why and what can be done. */
public final class LedgerUnavailable extends Exception {
  private static final long serialVersionUID = 1L;

  LedgerUnavailable(String message, @Nullable Throwable cause) {
    super(message, cause);
  }
}
