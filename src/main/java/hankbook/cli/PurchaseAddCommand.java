package hankbook.cli;

import hankbook.exchange.BadInput;
import hankbook.store.LedgerUnavailable;
import hankbook.studio.NotDone;
import hankbook.studio.Purchased;
import hankbook.studio.Purchases;
import hankbook.studio.TextFile;
import java.nio.file.Path;
import org.jspecify.annotations.NullUnmarked;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;

/** Yarn was paid. */
@NullUnmarked
@Command(name = "add", description = "Enter a purchase from a file: its skeins, which the ledger must have, cost from then on what was paid for them.", mixinStandardHelpOptions = true)
final class PurchaseAddCommand extends LedgerCommand {
  @Parameters(index = "0", paramLabel = "FILE", description = "The purchase, as a purchase file.")
  private Path file;

  @Override
  public Integer call() throws BadInput, NotDone, LedgerUnavailable {
    return ledger().inExisting(studio -> {
      Purchased purchased = new Purchases(studio).add(file.toString(), TextFile.read(file));
      out().println(ledger().json() ? PurchaseJson.one(purchased) : PurchaseReport.one(purchased));
      return ExitCode.DONE;
    });
  }
}
