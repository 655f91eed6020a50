package hankbook.cli;

import hankbook.exchange.BadInput;
import hankbook.store.LedgerUnavailable;
import hankbook.studio.NotDone;
import hankbook.studio.Receive;
import hankbook.studio.TextFile;
import java.nio.file.Path;
import org.jspecify.annotations.NullUnmarked;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** Yarn comes into the house. */
@NullUnmarked
@Command(name = "receive", description = "Receive the skeins of a stock file: all rows or none. Rows received before are left as they are.", mixinStandardHelpOptions = true)
final class ReceiveCommand extends LedgerCommand {
  @Option(names = "--csv", required = true, paramLabel = "FILE", description = "The skeins, as a stock file.")
  private Path file;

  @Override
  public Integer call() throws BadInput, NotDone, LedgerUnavailable {
    return ledger().inExistingOrNew(studio -> {
      Receive.Delivery delivery = new Receive(studio).file(file.toString(), TextFile.read(file));
      out().println(ledger().json() ? LedgerJson.delivery(delivery) : LedgerReport.delivery(delivery));
      return ExitCode.DONE;
    });
  }
}
