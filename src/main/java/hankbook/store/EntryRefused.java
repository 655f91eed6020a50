package hankbook.store;

import hankbook.ledger.Refusal;

/** An entry was refused; thrown so that the whole transaction around it is taken back. */
public final class EntryRefused extends RuntimeException {
  private static final long serialVersionUID = 1L;

  private final transient Refusal refusal;

  EntryRefused(Refusal refusal) {
    super(refusal.message());
    this.refusal = refusal;
  }

  /** Why. */
  public Refusal refusal() {
    return refusal;
  }
}
