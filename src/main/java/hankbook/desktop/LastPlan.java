package hankbook.desktop;

/** Remembers which plan was open last, and opens it again when the plans are first looked at. */
final class LastPlan {
  private static final String KEY = "plan";

  private final Remembered remembered;
  private final String ledger;
  private final PlansModel plans;
  private boolean reopened;

  /** @param ledger whose plans they are; a plan of another one is not opened here */
  LastPlan(Remembered remembered, String ledger, PlansModel plans) {
    this.remembered = remembered;
    this.ledger = ledger;
    this.plans = plans;
    plans.editor().nameProperty().subscribe(this::note);
  }

  /** A plan of a ledger. */
  record Open(String ledger, String plan) {}

  private void note(String name) {
    if (!name.isEmpty()) {
      remembered.put(KEY, new Open(ledger, name));
    }
  }

  /** Opens it, if it is still there and none was opened meanwhile; only the first time. */
  void reopen() {
    if (!reopened) {
      reopened = true;
      remembered.get(KEY, Open.class).filter(open -> open.ledger().equals(ledger)).ifPresent(open -> plans.openIfThere(open.plan()));
    }
  }
}
