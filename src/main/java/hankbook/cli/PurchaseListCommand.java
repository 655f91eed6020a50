package hankbook.cli;

import hankbook.exchange.BadInput;
import hankbook.store.LedgerUnavailable;
import hankbook.studio.NotDone;
import hankbook.studio.Purchased;
import hankbook.studio.Purchases;
import java.util.List;
import org.jspecify.annotations.NullUnmarked;
import picocli.CommandLine.Command;

/** Lists what was paid. */
@NullUnmarked
@Command(name = "list", description = "The purchases; those that were taken back are marked.", mixinStandardHelpOptions = true)
final class PurchaseListCommand extends LedgerCommand {
  @Override
  public Integer call() throws BadInput, NotDone, LedgerUnavailable {
    return ledger().inExisting(studio -> {
      List<Purchased> all = new Purchases(studio).all();
      out().println(ledger().json() ? PurchaseJson.list(all) : PurchaseReport.list(all));
      return ExitCode.DONE;
    });
  }
}
