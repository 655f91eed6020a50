package hankbook.cli;

import hankbook.exchange.BadInput;
import hankbook.store.LedgerUnavailable;
import hankbook.studio.AuditLedger;
import hankbook.studio.NotDone;
import org.jspecify.annotations.NullUnmarked;
import picocli.CommandLine.Command;

/** Checks the whole book. */
@NullUnmarked
@Command(name = "audit", description = "Recompute every hash and every balance, and name the first entry that is not as it was written.", mixinStandardHelpOptions = true)
final class AuditCommand extends LedgerCommand {
  @Override
  public Integer call() throws BadInput, NotDone, LedgerUnavailable {
    return ledger().inExisting(studio -> {
      AuditLedger.Audited audited = new AuditLedger(studio).audit();
      out().println(ledger().json() ? LedgerJson.audited(audited) : LedgerReport.audited(audited));
      return audited.audit().isClean() ? ExitCode.DONE : ExitCode.FAULT;
    });
  }
}
