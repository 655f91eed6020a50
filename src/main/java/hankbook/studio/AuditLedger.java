package hankbook.studio;

import hankbook.ledger.Audit;
import hankbook.ledger.Finding;
import hankbook.store.IllegibleBalance;
import hankbook.store.IllegibleEntry;
import java.util.List;

/** Reads the whole ledger again and compares it with itself. */
public final class AuditLedger {
  private final Studio studio;

  public AuditLedger(Studio studio) {
    this.studio = studio;
  }

  /**
   * What the audit found.
   *
   * @param entries how many were read; none where one cannot be read at all
   * @param audit what is wrong
   */
  public record Audited(long entries, Audit audit) {}

  /** Recomputes every hash and every balance. */
  public Audited audit() {
    try {
      return studio.read(session -> {
        var chain = session.entries().chain();
        return new Audited(chain.size(), Audit.of(chain, session.entries().end(), session.balances().all()));
      });
    } catch (IllegibleEntry illegible) {
      return unread(new Finding.Illegible(illegible.number(), illegible.id(), illegible.what()));
    } catch (IllegibleBalance illegible) {
      return unread(new Finding.IllegibleBalance(illegible.skein(), illegible.what()));
    }
  }

  private static Audited unread(Finding finding) {
    return new Audited(0, new Audit(List.of(finding)));
  }
}
